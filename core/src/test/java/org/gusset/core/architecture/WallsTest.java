package org.gusset.core.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;

/** The walls of the core, each with its reason. */
@AnalyzeClasses(packages = "org.gusset.core", importOptions = DoNotIncludeTests.class)
class WallsTest {
    @ArchTest
    static final ArchRule arrowsRunOneWay = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("diagnostic")
            .definedBy("..core.diagnostic..")
            .layer("measure")
            .definedBy("..core.measure..")
            .layer("geometry")
            .definedBy("..core.geometry..")
            .layer("jts")
            .definedBy("..core.jts..")
            .layer("graph")
            .definedBy("..core.graph..")
            .layer("construct")
            .definedBy("..core.construct..")
            .layer("evaluate")
            .definedBy("..core.evaluate..")
            .layer("pattern")
            .definedBy("..core.pattern..")
            .layer("change")
            .definedBy("..core.change..")
            .layer("check")
            .definedBy("..core.check..")
            .layer("seam")
            .definedBy("..core.seam..")
            .layer("draft")
            .definedBy("..core.draft..")
            .layer("stress")
            .definedBy("..core.stress..")
            .layer("chalk")
            .definedBy("..core.chalk..")
            .layer("grade")
            .definedBy("..core.grade..")
            .whereLayer("grade")
            .mayNotBeAccessedByAnyLayer()
            .layer("sizing")
            .definedBy("..core.sizing..")
            .whereLayer("sizing")
            .mayNotBeAccessedByAnyLayer()
            .layer("cloth")
            .definedBy("..core.cloth", "..core.cloth.packing..")
            .whereLayer("cloth")
            .mayNotBeAccessedByAnyLayer()
            .layer("json")
            .definedBy("..core.json..")
            .layer("build")
            .definedBy("..core.build..")
            .whereLayer("build")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("stress")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("chalk")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("json")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("draft")
            .mayOnlyBeAccessedByLayers("stress", "chalk", "cloth", "grade", "sizing", "json", "build")
            .whereLayer("seam")
            .mayOnlyBeAccessedByLayers("draft", "grade", "json", "build")
            .whereLayer("check")
            .mayOnlyBeAccessedByLayers("seam", "draft", "stress", "grade", "json", "build")
            .whereLayer("pattern")
            .mayOnlyBeAccessedByLayers("change", "check", "seam", "draft", "chalk", "cloth", "grade", "json", "build")
            .whereLayer("change")
            .mayOnlyBeAccessedByLayers("draft")
            .whereLayer("evaluate")
            .mayOnlyBeAccessedByLayers("draft", "stress", "build")
            .whereLayer("construct")
            .mayOnlyBeAccessedByLayers("pattern", "change", "check", "seam", "draft", "stress", "build")
            .whereLayer("graph")
            .mayOnlyBeAccessedByLayers(
                    "construct", "evaluate", "pattern", "change", "check", "seam", "draft", "stress", "grade", "build")
            .because("a host that needs only geometry must not drag in drafts");

    @ArchTest
    static final ArchRule packingStandsAlone = noClasses()
            .that()
            .resideInAPackage("..core.cloth.packing..")
            .should()
            .dependOnClassesThat(resideInAPackage("org.gusset.core..")
                    .and(com.tngtech.archunit.base.DescribedPredicate.not(
                            resideInAnyPackage("..core.cloth.packing..", "..core.geometry.."))))
            .because("a strip is packed without knowing what a piece or a fold is");

    @ArchTest
    static final ArchRule noCycles =
            slices().matching("org.gusset.core.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule jtsOnlyInside = methods()
            .that()
            .arePublic()
            .and()
            .areDeclaredInClassesThat(
                    com.tngtech.archunit.base.DescribedPredicate.not(resideInAPackage("..core.jts..")))
            .should(notSpeakOf("org.locationtech.jts"))
            .because("hosts that do not use JTS should never meet it");

    @ArchTest
    static final ArchRule nothingFromOutside = noClasses()
            .should()
            .dependOnClassesThat(resideInAnyPackage("java.io..", "java.nio.file..", "java.net..", "java.time..")
                    .and(com.tngtech.archunit.base.DescribedPredicate.not(
                            com.tngtech.archunit.core.domain.JavaClass.Predicates.type(java.io.Serializable.class))))
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(System.class, "getProperty", String.class)
            .orShould()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(ThreadLocal.class)
            .because("a draft may come from a stranger and must give the same bits everywhere");

    @ArchTest
    static final ArchRule nothingIsSerializable = noClasses()
            .that()
            .areNotAssignableTo(Enum.class)
            .and()
            .areNotAssignableTo(Throwable.class)
            .should()
            .beAssignableTo(java.io.Serializable.class)
            .because(
                    "a draft is stored as its text and choices, a drawing as its JSON; that enums and exceptions are Serializable comes with the language");

    @ArchTest
    static final ArchRule fewExceptions = classes()
            .that()
            .areAssignableTo(Throwable.class)
            .should()
            .haveSimpleName("GussetException")
            .orShould()
            .haveSimpleName("Fault")
            .orShould()
            .haveModifier(JavaModifier.PRIVATE)
            .because(
                    "hosts meet two exceptions: diagnostics thrown on request, and a fault within an operation; neither is meant to be stored");

    @ArchTest
    static final ArchRule strictMath = noClasses()
            .should()
            .callMethod(Math.class, "sin", double.class)
            .orShould()
            .callMethod(Math.class, "cos", double.class)
            .orShould()
            .callMethod(Math.class, "tan", double.class)
            .orShould()
            .callMethod(Math.class, "atan2", double.class, double.class)
            .orShould()
            .callMethod(Math.class, "hypot", double.class, double.class)
            .orShould()
            .callMethod(Math.class, "pow", double.class, double.class)
            .orShould()
            .callMethod(Math.class, "cbrt", double.class)
            .because("only StrictMath gives the same bits on every JDK");

    @ArchTest
    static final ArchRule noMutableStatics =
            fields().that().areStatic().should().beFinal().because("drafts are evaluated by many threads at once");

    @ArchTest
    static final ArchRule closedTypes = classes()
            .that()
            .arePublic()
            .and()
            .areTopLevelClasses()
            .should(new ArchCondition<>("be records, enums, interfaces or final") {
                @Override
                public void check(JavaClass type, ConditionEvents events) {
                    boolean closed = type.isRecord()
                            || type.isEnum()
                            || type.isInterface()
                            || type.getModifiers().contains(JavaModifier.FINAL);
                    if (!closed) {
                        events.add(SimpleConditionEvent.violated(type, type.getName() + " can be extended"));
                    }
                }
            })
            .because("values that can be extended cannot be relied on");

    private static ArchCondition<JavaMethod> notSpeakOf(String packageName) {
        return new ArchCondition<>("not speak of " + packageName) {
            @Override
            public void check(JavaMethod method, ConditionEvents events) {
                boolean exported = method.getOwner().getModifiers().contains(JavaModifier.PUBLIC);
                boolean speaks = method.getRawReturnType().getPackageName().startsWith(packageName)
                        || method.getRawParameterTypes().stream()
                                .anyMatch(t -> t.getPackageName().startsWith(packageName));
                if (exported && speaks) {
                    events.add(SimpleConditionEvent.violated(method, method.getFullName()));
                }
            }
        };
    }
}
