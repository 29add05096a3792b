package org.gusset.core.grade;

import java.util.ArrayList;
import java.util.List;

/** Puts what several sizes list in one list, without changing the order of any where that can be. */
final class InOrder {
    private InOrder() {}

    static <T> List<T> merged(List<List<T>> lists) {
        List<T> all = new ArrayList<>();
        for (List<T> list : lists) {
            int at = 0;
            for (T one : list) {
                int known = all.indexOf(one);
                if (known < 0) {
                    all.add(at, one);
                    known = at;
                }
                at = known + 1;
            }
        }
        return all;
    }
}
