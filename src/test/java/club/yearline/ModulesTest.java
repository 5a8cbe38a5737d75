package club.yearline;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;
import org.springframework.modulith.core.ApplicationModules;

/** Which module may know which. */
class ModulesTest {

  @Test
  void modulesKnowOnlyWhatTheyDeclare() {
    ApplicationModules.of(Yearline.class).verify();
  }

  @Test
  void theEngineAndTheEstimatesKnowNoFramework() {
    var engine =
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages(
                "club.yearline.effectivity", "club.yearline.citation", "club.yearline.estimation");
    classes()
        .that()
        .resideInAnyPackage(
            "club.yearline.effectivity", "club.yearline.citation", "club.yearline.estimation")
        .and()
        .doNotHaveSimpleName("package-info")
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(
            "java..",
            "org.jspecify..",
            "club.yearline.effectivity",
            "club.yearline.citation",
            "club.yearline.estimation")
        .check(engine);
  }
}
