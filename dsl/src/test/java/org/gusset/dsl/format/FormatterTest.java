package org.gusset.dsl.format;

import static org.assertj.core.api.Assertions.assertThat;

import org.gusset.core.diagnostic.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormatterTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "let a=b+c*d-e/f                    | let a = b + c * d - e / f",
                "let a = - b - -3cm                 | let a = -b - -3 cm",
                "let a=( b + ( c ) )                | let a = (b + (c))",
                "let a = max ( b ,c,d )             | let a = max(b, c, d)",
                "let a = Back . tip                 | let a = Back.tip",
                "let a = b . 1 . 2                  | let a = b.1 .2",
                "let a = 9  1/2in                   | let a = 9 1/2 in",
                "let a = 5ft 3in                    | let a = 5 ft 3 in",
                "let a = 9½in                       | let a = 9½ in",
                "let a = 40 %                       | let a = 40%",
                "let a = b*1/3                      | let a = b * 1/3",
                "let a = b/4/2                      | let a = b / 4 / 2",
                "let a = b/4/2 cm                   | let a = b / 4/2 cm",
                "let a = b/4 / 2 cm                 | let a = b / 4 / 2 cm",
                "let a = 1 /2 cm                    | let a = 1 / 2 cm",
                "let a = b if c<=d and not e else f | let a = b if c <= d and not e else f",
                "measure w from 1cm to 2cm \"how\"  | measure w from 1 cm to 2 cm  \"how\"",
                "rule f ( a length ) = a/2 \"why\"  | rule f(a length) = a / 2  \"why\"",
                "check a>b\"no\"                    | check a > b  \"no\"",
                "draft\"T\"\"n\"                    | draft \"T\"  \"n\"",
                "use\"f\"as b with c=1,d=2          | use \"f\" as b with c = 1, d = 2",
                "seam s=A.a to B.b ease -1 cm to ( 2 cm ) | seam s = A.a to B.b ease -1 cm to (2 cm)",
                "let a = ease - 1 cm                | let a = ease - 1 cm",
                "let a = \"  two   blanks {  a+b }\" | let a = \"  two   blanks {  a+b }\"",
                "let a = 1   # why                  | let a = 1  # why"
            })
    void blanksAreSetAnew(String written, String laid) {
        assertThat(Laid.sound(written)).isEqualTo(laid + "\n");
    }

    @Test
    void bracketsOfPlacesAndChoicesStandApartFromTheWordBeforeThem() {
        assertThat(Laid.sound("piece P{point a=at( 1 cm,2 cm )\npoint b=a down(3 cm if c else 4 cm)}"))
                .isEqualTo("""
                        piece P {
                          point a = at (1 cm, 2 cm)
                          point b = a down (3 cm if c else 4 cm)
                        }
                        """);
    }

    @Test
    void blocksAreIndentedAndEachStatementHasItsLine() {
        assertThat(Laid.sound(
                        "gusset 1 draft \"T\"\n\n\n\nlet a = 1 let b = 2\npiece P\n{\n\nstep \"S\"\n{ point p=origin\n"
                                + "say \"x\"\n\n}\n\n\noutline a,b cut 1\n\n}\n\n"))
                .isEqualTo("""
                        gusset 1
                        draft "T"

                        let a = 1
                        let b = 2
                        piece P {
                          step "S" {
                            point p = origin
                            say "x"
                          }

                          outline a, b
                          cut 1
                        }
                        """);
    }

    @Test
    void aBlockOnOneLineStaysThereIfItFits() {
        assertThat(Laid.sound("strip B long 3cm wide 2cm{allow 1 cm cut 1}"))
                .isEqualTo("strip B long 3 cm wide 2 cm { allow 1 cm  cut 1 }\n");
        assertThat(Laid.sound("piece P { }\npiece Q {\n}")).isEqualTo("piece P { }\npiece Q {\n}\n");
        String edges = "e".repeat(40) + ", " + "f".repeat(40);
        assertThat(Laid.sound("piece P { outline " + edges + " allow 1 cm }"))
                .isEqualTo("piece P {\n  outline " + edges + "\n  allow 1 cm\n}\n");
    }

    @Test
    void commentsKeepTheirPlaceAndTheirText() {
        assertThat(Laid.sound("""
                        # first

                        let a=1 # one
                          # between
                        piece P # head
                           # before the brace
                        { # behind the brace
                        outline a, # mid
                          # alone
                          b
                             # last
                        } # end
                        # after   \t
                        """)).isEqualTo("""
                        # first

                        let a = 1  # one
                        # between
                        piece P {  # head
                          # before the brace
                          # behind the brace
                          outline a,  # mid
                              # alone
                              b
                          # last
                        }  # end
                        # after
                        """);
    }

    @Test
    void columnsThatWereLinedUpStaySoAndOthersDoNot() {
        assertThat(Laid.sound("""
                        let a      = 1
                        let longer = 2
                        let b = 3

                        let c  = 4
                        let dd  = 5
                        measure waist    from 1 cm to 2 cm     "round"
                        measure hip      else 3 cm             "lower"
                        """)).isEqualTo("""
                        let a      = 1
                        let longer = 2
                        let b = 3

                        let c = 4
                        let dd = 5
                        measure waist from 1 cm to 2 cm  "round"
                        measure hip   else 3 cm          "lower"
                        """);
        assertThat(Laid.sound("piece P {\n  point a    = origin\n  line  edge = a to b\n}"))
                .contains("  point a    = origin\n  line  edge = a to b\n");
    }

    @Test
    void longStatementsBreakBeforeConnectingWords() {
        assertThat(
                        Laid.sound(
                                "seam waist = all Front.waist_edge + all Back.waist_edge to part of Waistband.bottom between"
                                        + " (on Waistband.bottom at 3 cm from Waistband.end_low) and Waistband.start_low ease -1 cm to 1 cm"))
                .isEqualTo("""
                        seam waist = all Front.waist_edge + all Back.waist_edge to part of Waistband.bottom
                            between (on Waistband.bottom at 3 cm from Waistband.end_low) and Waistband.start_low
                            ease -1 cm to 1 cm
                        """);
        assertThat(Laid.sound("check a >= b \"" + "x".repeat(90) + "\""))
                .isEqualTo("check a >= b\n    \"" + "x".repeat(90) + "\"\n");
        assertThat(Laid.sound("piece P { say \"" + "x".repeat(60) + "\"\n \"" + "y".repeat(60) + "\"\n}"))
                .isEqualTo("piece P {\n  say \"" + "x".repeat(60) + "\"\n      \"" + "y".repeat(60) + "\"\n}\n");
        assertThat(Laid.sound("let total = " + "abcdefghi * ".repeat(12) + "drop")
                        .lines())
                .hasSize(2)
                .allMatch(l -> l.length() <= 100)
                .noneMatch(l -> l.strip().startsWith("drop"));
    }

    @Test
    void lineEndsAreThoseOfTheText() {
        assertThat(Laid.format("let a=1\r\n\r\nlet b=2\r\n")).isEqualTo("let a = 1\r\n\r\nlet b = 2\r\n");
        assertThat(Laid.format("\uFEFFlet a=1")).isEqualTo("let a = 1\n");
        assertThat(Laid.format(" \n\n")).isEmpty();
    }

    @Test
    void whatCannotBeReadIsNotLaidOut() {
        Outcome<String> outcome = Formatter.format(Laid.source("let a = \nlet = 3"));
        assertThat(outcome.value()).isEmpty();
        assertThat(outcome.diagnostics())
                .isNotEmpty()
                .allMatch(d -> d.code().id().startsWith("SYN"));
    }
}
