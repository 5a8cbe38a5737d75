package club.yearline.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import club.yearline.testing.Database;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.DefaultApplicationArguments;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.web.servlet.MockMvc;

/** The whole application on an empty embedded database: the demo at start, the package by HTTP. */
@SpringBootTest
@AutoConfigureMockMvc
class PackageControllerTest {

  @TempDir static Path folder;

  @Autowired private MockMvc mvc;
  @Autowired private DemoLoader demo;
  @Autowired private Exporting exporting;

  @DynamicPropertySource
  static void settings(DynamicPropertyRegistry registry) {
    Database database = Database.h2();
    registry.add("spring.datasource.url", database::url);
    registry.add("spring.datasource.username", database::user);
    registry.add("spring.datasource.password", database::password);
  }

  @Test
  void theDemoLoadedAtStartIsGivenBackAsAPackage() throws Exception {
    byte[] zip =
        mvc.perform(get("/api/v1/package"))
            .andExpect(status().isOk())
            .andExpect(content().contentType("application/zip"))
            .andExpect(
                header().string("Content-Disposition", "attachment; filename=\"catalogue-r1.zip\""))
            .andReturn()
            .getResponse()
            .getContentAsByteArray();
    Path file = Files.write(folder.resolve("package.zip"), zip);
    assertThat(PackageReader.read(file).records())
        .isEqualTo(PackageReader.read(Path.of("seed-data", "demo")).records());
  }

  @Test
  void aRevisionNeverChangesAndTheHeadIsAskedAgain() throws Exception {
    mvc.perform(get("/api/v1/package").param("rev", "1"))
        .andExpect(status().isOk())
        .andExpect(header().string("Cache-Control", "max-age=31536000, private, immutable"))
        .andExpect(header().string("ETag", "\"package-1\""));
    mvc.perform(get("/api/v1/package").header("If-None-Match", "\"package-1\""))
        .andExpect(status().isNotModified());
  }

  @Test
  void anUnknownRevisionIsAProblem() throws Exception {
    mvc.perform(get("/api/v1/package").param("rev", "99"))
        .andExpect(status().isNotFound())
        .andExpect(content().contentType("application/problem+json"))
        .andExpect(jsonPath("$.title").isNotEmpty());
    mvc.perform(get("/api/v1/package").param("rev", "first")).andExpect(status().isBadRequest());
  }

  @Test
  void aFilledDatabaseIsLeftAlone() throws Exception {
    demo.run(new DefaultApplicationArguments());
    assertThat(exporting.at(null).number()).isEqualTo(1);
  }
}
