package org.gusset.dsl.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The walls of the language, each with its reason. */
@AnalyzeClasses(packages = "org.gusset.dsl", importOptions = DoNotIncludeTests.class)
class WallsTest {
    @ArchTest
    static final ArchRule antlrStaysInTheParser = noClasses()
            .that()
            .resideOutsideOfPackage("..dsl.internal.parse..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.antlr..")
            .because("the parser library must be replaceable without touching the rest");

    @ArchTest
    static final ArchRule parsingKnowsNothingOfMeaning = noClasses()
            .that()
            .resideInAnyPackage("..dsl.internal.parse..", "..dsl.syntax..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("..dsl.internal.resolve..", "..dsl.internal.lower..")
            .because("the road runs one way: text, tree, checked tree, graph");

    @ArchTest
    static final ArchRule resolvingKnowsNothingOfGraphs = noClasses()
            .that()
            .resideInAPackage("..dsl.internal.resolve..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("..dsl.internal.lower..", "..dsl.internal.parse..")
            .because("the checked tree must not depend on how it is lowered or was read");

    @ArchTest
    static final ArchRule nothingFromOutside = noClasses()
            .should()
            .dependOnClassesThat(resideInAnyPackage("java.io..", "java.nio.file..", "java.net..", "java.time..")
                    .and(DescribedPredicate.not(type(java.io.Serializable.class))))
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .because("a draft may come from a stranger: it reads no file and opens no connection");

    @ArchTest
    static final ArchRule noMutableStatics = fields().that()
            .areStatic()
            .and()
            .areDeclaredInClassesThat()
            .haveNameNotMatching(".*\\.Gusset(Lexer|Parser)(\\$.*)?")
            .should()
            .beFinal()
            .because("drafts are compiled by many threads at once");
}
