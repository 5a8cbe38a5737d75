package club.yearline.api;

import java.util.stream.Stream;

/** Questions to the demo catalogue that have no answer, each with the status that says why. */
final class BadQuestions {

  private BadQuestions() {}

  /** A question and the status it gets. */
  record BadQuestion(int status, String address) {}

  static Stream<BadQuestion> all() {
    String long200 = "X".repeat(200);
    return Stream.of(
        bad(404, "/families/nothing"),
        bad(404, "/variants/nothing"),
        bad(404, "/features/nothing"),
        bad(404, "/changes/nothing"),
        bad(404, "/sources/nothing"),
        bad(404, "/families/%3Cscript%3Ealert(1)%3Cscript%3E"),
        bad(404, "/families/" + long200),
        bad(400, "/families?rev=1&rev=2"),
        bad(400, "/families?revision=1"),
        bad(400, "/families/turnstone?key=turnstone"),
        bad(400, "/expected"),
        bad(400, "/expected?variant=la-2b"),
        bad(400, "/expected?year=1966"),
        bad(400, "/expected?serial=%20"),
        bad(400, "/expected?serial=" + long200),
        bad(400, "/expected?variant=la-2b&year=recent"),
        bad(400, "/expected?variant=la-2b&year=99999999999"),
        bad(400, "/expected?serial=LT-0412&neighbours=perhaps"),
        bad(400, "/expected?serial=LT-0412&serial=LT-0501"),
        bad(404, "/expected?variant=nothing&year=1966"),
        bad(404, "/expected?serial=ZZ-1"),
        bad(422, "/expected?serial=ZZ-1&variant=la-2b"),
        bad(422, "/expected?serial=LT-9999"),
        bad(422, "/expected?serial=LT-1300"),
        bad(422, "/expected?serial=LT-0035&rev=2"),
        bad(422, "/expected?serial=LT-0412&year=1969&variant=la-2b"),
        bad(422, "/expected?variant=la-2b&year=1900"),
        bad(422, "/expected?variant=la-2b&year=-5"),
        bad(400, "/timeline"),
        bad(404, "/timeline?feature=nothing"),
        bad(404, "/timeline?feature=door-latch&family=nothing"),
        bad(400, "/differences?from=la-2b:1966"),
        bad(400, "/differences?from=la-2b&to=la-2b:1968"),
        bad(400, "/differences?from=la-2b:1966&to=:"),
        bad(404, "/differences?from=:1966&to=la-2b:1968"),
        bad(404, "/differences?from=nothing:1966&to=la-2b:1968"),
        bad(422, "/differences?from=la-2b:1966&to=la-2b:2020"),
        bad(400, "/impact?from=1"),
        bad(400, "/impact?from=1&to="),
        bad(400, "/impact?from=one&to=2"),
        bad(404, "/impact?from=1&to=99"),
        bad(404, "/impact?from=-1&to=1"),
        bad(400, "/impact?from=1&to=2&rev=1"),
        bad(400, "/resolve"),
        bad(400, "/resolve?q=" + "word%20".repeat(60)),
        bad(400, "/findings?level=error"),
        bad(400, "/spot "),
        bad(400, "/spot ["),
        bad(400, "/spot []"),
        bad(400, "/spot {} {}"),
        bad(400, "/spot {\"family\": \"turnstone\", \"family\": \"whimbrel\"}"),
        bad(400, "/spot {\"family\": 5}"),
        bad(400, "/spot {\"famly\": \"turnstone\"}"),
        bad(400, "/spot {\"limit\": 1.5}"),
        bad(400, "/spot {\"observations\": {}}"),
        bad(400, "/spot {\"observations\": [\"door-latch\"]}"),
        bad(400, "/spot {\"observations\": [{\"feature\": \"door-latch\"}]}"),
        bad(400, "/spot?family=turnstone {}"),
        bad(422, "/spot {\"family\": \"nothing\"}"),
        bad(422, "/spot {\"visibility\": \"afar\"}"),
        bad(422, "/spot {\"limit\": 0}"),
        bad(422, "/spot {\"skip\": [\"nothing\"]}"),
        bad(422, "/spot {\"observations\": [{\"feature\": \"nothing\", \"value\": \"x\"}]}"),
        bad(422, "/spot {\"observations\": [{\"feature\": \"door-latch\", \"value\": 5}]}"),
        bad(400, "/cut-in "),
        bad(400, "/cut-in []"),
        bad(400, "/cut-in {}"),
        bad(400, cutIn("\"observation\": []")),
        bad(400, cutIn("\"observations\": {}")),
        bad(400, cutIn("\"observations\": [{\"serial\": \"LT-0398\"}]")),
        bad(400, cutIn("\"observations\": [{\"serial\": 398, \"value\": \"new\"}]")),
        bad(404, "/cut-in {\"change\": \"nothing\", \"variant\": \"la-2b\"}"),
        bad(404, "/cut-in {\"change\": \"door-latch-rotary\", \"variant\": \"nothing\"}"),
        bad(422, "/cut-in {\"change\": \"door-latch-rotary\", \"variant\": \"la-2\"}"),
        bad(422, "/cut-in {\"change\": \"door-latch-rotary\", \"variant\": \"la-2c\"}"),
        bad(422, cutIn("\"series\": \"w\"")),
        bad(422, cutIn("\"lo\": \"W-660001\"")),
        bad(422, cutIn("\"hi\": \"" + "9".repeat(60) + "\"")),
        bad(422, cutIn("\"lo\": \"LT-0500\", \"hi\": \"LT-0400\"")),
        bad(422, cutIn("\"observations\": [{\"serial\": \"W-1\", \"value\": \"new\"}]")),
        bad(422, cutIn("\"observations\": [{\"serial\": \"LT-1\", \"value\": \"newer\"}]")),
        bad(400, "/inspect "),
        bad(400, "/inspect []"),
        bad(400, "/inspect {}"),
        bad(400, "/inspect {\"variant\": \"la-2b\"}"),
        bad(400, "/inspect {\"variant\": \"la-2b\", \"year\": \"1966\"}"),
        bad(400, "/inspect {\"serial\": 412}"),
        bad(400, "/inspect {\"serial\": \"LT-0412\", \"seen\": []}"),
        bad(400, "/inspect {\"serial\": \"LT-0412\", \"observations\": [{}]}"),
        bad(404, "/inspect {\"serial\": \"ZZ-1\"}"),
        bad(404, "/inspect {\"variant\": \"nothing\", \"year\": 1966}"),
        bad(422, "/inspect {\"serial\": \"LT-9999\"}"),
        bad(422, "/inspect {\"serial\": \"LT-1300\"}"),
        bad(422, "/inspect {\"variant\": \"la-2b\", \"year\": 1900}"),
        bad(
            422,
            "/inspect {\"serial\": \"LT-0412\", \"observations\":"
                + " [{\"feature\": \"nothing\", \"value\": \"x\"}]}"),
        bad(
            422,
            "/inspect {\"serial\": \"LT-0412\", \"observations\":"
                + " [{\"feature\": \"door-latch\", \"value\": \"x\"}]}"));
  }

  /** A question for the cut-in of the rotary door latch, with one member more. */
  private static String cutIn(String member) {
    return "/cut-in {\"change\": \"door-latch-rotary\", \"variant\": \"la-2b\", " + member + "}";
  }

  private static BadQuestion bad(int status, String question) {
    return new BadQuestion(status, "/api/v1" + question);
  }
}
