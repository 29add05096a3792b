package org.gusset.dsl.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** What holds for whole packages. */
class PackagesTest {
    private final JavaClasses classes = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.gusset.dsl");

    @Test
    void everyPackageSaysWhereNothingMayBeMissing() {
        assertThat(classes.stream().map(JavaClass::getPackage).distinct())
                .hasSizeGreaterThanOrEqualTo(6)
                .allMatch(p -> isMarked(p));
    }

    private static boolean isMarked(JavaPackage javaPackage) {
        return javaPackage.isAnnotatedWith(NullMarked.class);
    }
}
