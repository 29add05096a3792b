package org.gusset.svg;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaFieldAccess;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.gusset.svg", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    @ArchTest
    static final ArchRule knowsNothingOfTheLanguage = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.gusset.dsl..")
            .because("pieces can be drawn from plain Java");

    @ArchTest
    static final ArchRule nothingIsSerializable = noClasses()
            .that()
            .areNotAssignableTo(Enum.class)
            .should()
            .beAssignableTo(java.io.Serializable.class)
            .because(
                    "a draft is stored as its text and choices, a drawing as its JSON; that enums are Serializable comes with the language");

    @ArchTest
    static final ArchRule staysLight = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java.lang..",
                    "java.util..",
                    "java.math..",
                    "org.gusset.core..",
                    "org.gusset.svg..",
                    "org.jspecify..")
            .because("a host that embeds the library takes four small jars");

    @ArchTest
    static final ArchRule scenesKnowNoWriter = noClasses()
            .that()
            .resideInAnyPackage("..svg.scene..", "..svg.sheet..", "..svg.style..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("..svg.internal.write..")
            .because("other writers draw the same scenes");

    @ArchTest
    static final ArchRule scenesKnowNoLook = noClasses()
            .that()
            .resideInAPackage("..svg.scene..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("..svg.style..", "..svg.sheet..")
            .because("what a mark means and how it looks are apart");

    @ArchTest
    static final ArchRule packagesHaveNoCycles =
            slices().matching("org.gusset.svg.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule touchesNothingOutside = noClasses()
            .should()
            .dependOnClassesThat(outsideWorld())
            .because("the same input gives the same bytes, and a host lends neither files nor clock");

    @ArchTest
    static final ArchRule usesNoStandardStreamsOrProperties = noClasses()
            .should()
            .callMethodWhere(outsideAccess())
            .orShould()
            .accessFieldWhere(outsideField())
            .because("the host owns them");

    @ArchTest
    static final ArchRule keepsNoState = noFields()
            .that()
            .haveModifier(JavaModifier.STATIC)
            .should()
            .notHaveModifier(JavaModifier.FINAL)
            .because("many threads draw at once");

    private static DescribedPredicate<JavaClass> outsideWorld() {
        return DescribedPredicate.describe(
                "files, network, clocks and threads",
                type -> type.getName().startsWith("java.io.File")
                        || type.getPackageName().startsWith("java.nio.file")
                        || type.getPackageName().startsWith("java.net")
                        || type.getPackageName().startsWith("java.time")
                        || type.getName().equals("java.util.Date")
                        || type.getName().equals("java.util.Random")
                        || type.getName().equals("java.lang.ThreadLocal"));
    }

    private static DescribedPredicate<JavaMethodCall> outsideAccess() {
        return DescribedPredicate.describe("System", call -> isSystem(call.getTargetOwner()));
    }

    private static DescribedPredicate<JavaFieldAccess> outsideField() {
        return DescribedPredicate.describe("System", access -> isSystem(access.getTargetOwner()));
    }

    private static boolean isSystem(JavaClass type) {
        return type.getName().equals("java.lang.System");
    }
}
