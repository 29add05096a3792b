package org.gusset.dsl.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Locale;
import java.util.Set;

/** The walls of the language, each with its reason. */
@AnalyzeClasses(packages = "org.gusset.dsl", importOptions = DoNotIncludeTests.class)
class WallsTest {
    private static final String PARSE = "..dsl.internal.parse..";
    private static final String RESOLVE = "..dsl.internal.resolve..";
    private static final String LOWER = "..dsl.internal.lower..";

    /** What ANTLR writes: its classes are open and hold caches, and nothing outside of the package sees them. */
    private static final Set<String> GENERATED = Set.of("GussetLexer", "GussetParser");

    private static final DescribedPredicate<JavaClass> HAND_WRITTEN =
            new DescribedPredicate<>("classes written by hand") {
                @Override
                public boolean test(JavaClass type) {
                    String name = type.getName().substring(type.getName().lastIndexOf('.') + 1);
                    return !GENERATED.contains(name.split("\\$")[0]);
                }
            };

    @ArchTest
    static final ArchRule nothingIsSerializable = noClasses()
            .that()
            .areNotAssignableTo(Enum.class)
            .and(HAND_WRITTEN)
            .and()
            .doNotHaveFullyQualifiedName("org.gusset.dsl.internal.parse.Strict$Stop")
            .should()
            .beAssignableTo(java.io.Serializable.class)
            .because(
                    "a draft is stored as its text and choices, a drawing as its JSON; enums are Serializable by the language, and Strict.Stop as an exception that ends one statement and leaves the parser never");

    @ArchTest
    static final ArchRule antlrInOneRoom = noClasses()
            .that()
            .resideOutsideOfPackage(PARSE)
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.antlr..")
            .because("the parser library may be changed without anyone noticing");

    @ArchTest
    static final ArchRule parsingKnowsNoMeaning = noClasses()
            .that()
            .resideInAPackage(PARSE)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(RESOLVE, LOWER, "org.gusset.core.graph..", "org.gusset.core.draft..")
            .because("the road runs from text to tree and on, never back");

    @ArchTest
    static final ArchRule resolvingKnowsNeitherTextNorGraph = noClasses()
            .that()
            .resideInAPackage(RESOLVE)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(PARSE, LOWER, "org.antlr..")
            .because("meaning hangs on the tree alone");

    @ArchTest
    static final ArchRule loweringKnowsNoParser = noClasses()
            .that()
            .resideInAPackage(LOWER)
            .should()
            .dependOnClassesThat()
            .resideInAPackage(PARSE)
            .because("the graph is built from what has been checked");

    @ArchTest
    static final ArchRule theTreeKnowsNobody = noClasses()
            .that()
            .resideInAPackage("..dsl.syntax..")
            .should()
            .dependOnClassesThat(resideInAPackage("org.gusset.dsl..")
                    .and(DescribedPredicate.not(resideInAPackage("..dsl.syntax.."))))
            .because("hosts read the tree without the rest");

    @ArchTest
    static final ArchRule reportsKnowMessagesOnly = noClasses()
            .that()
            .resideInAPackage("..dsl.report..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("..dsl.internal..", "..dsl.syntax.."))
            .because("messages of every stage are shown by the same means");

    @ArchTest
    static final ArchRule noCycles =
            slices().matching("org.gusset.dsl.internal.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule nothingFromOutside = noClasses()
            .that(HAND_WRITTEN)
            .should()
            .dependOnClassesThat(resideInAnyPackage("java.io..", "java.nio.file..", "java.net..", "java.time..")
                    .and(DescribedPredicate.not(type(java.io.Serializable.class))))
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(System.class, "getProperty", String.class)
            .orShould()
            .callMethod(System.class, "getenv", String.class)
            .orShould()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .callMethod(Locale.class, "getDefault")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(ThreadLocal.class)
            .because("a draft may come from a stranger and must give the same bits everywhere");

    @ArchTest
    static final ArchRule noMutableStatics = fields().that()
            .areStatic()
            .and()
            .areDeclaredInClassesThat(HAND_WRITTEN)
            .should()
            .beFinal()
            .because("drafts are compiled by many threads at once");

    @ArchTest
    static final ArchRule exportedTypesAreClosed = classes()
            .that()
            .arePublic()
            .and()
            .resideOutsideOfPackage("..internal..")
            .should(beClosed())
            .because("values that can be extended cannot be relied on");

    @ArchTest
    static final ArchRule ownTypesAreClosed = classes()
            .that(HAND_WRITTEN)
            .and()
            .resideInAPackage("..internal..")
            .and()
            .areTopLevelClasses()
            .should(beClosed());

    private static ArchCondition<JavaClass> beClosed() {
        return new ArchCondition<>("be records, enums, interfaces or final") {
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
        };
    }
}
