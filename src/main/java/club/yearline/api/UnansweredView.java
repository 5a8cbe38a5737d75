package club.yearline.api;

import io.swagger.v3.oas.annotations.media.ArraySchema;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The body of a problem with a question that was understood, for the description. */
@Schema(name = "Unanswered")
record UnansweredView(
    String type,
    String title,
    int status,
    String detail,
    String advice,
    List<ProblemView.Fault> errors,
    @ArraySchema(
            schema =
                @Schema(
                    anyOf = {Places.Near.class, PositionView.class, EntryViews.BlockView.class},
                    description =
                        "The nearest blocks of a serial in none; positions that may be meant; or"
                            + " blocks that say otherwise."))
        @Nullable List<Object> candidates,
    @Schema(description = "When the variant was produced.")
        @Nullable List<EntryViews.RunView> runs) {}
