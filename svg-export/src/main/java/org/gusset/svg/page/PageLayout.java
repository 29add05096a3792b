package org.gusset.svg.page;

import java.util.List;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Transform;

/**
 * What stands on which page.
 *
 * @param shared the pages of the first row, with all that is whole
 * @param spread the pieces that take several pages each
 * @param map where the map stands on the first page
 */
record PageLayout(List<Shared> shared, List<Spread> spread, MapRoom map) {
    PageLayout {
        shared = List.copyOf(shared);
        spread = List.copyOf(spread);
    }

    /** Something whole, the number of its page counted from 0, and the way from its frame to the page's. */
    record Put(Item item, int page, Transform toPage) {
        boolean turned() {
            return toPage.b() != 0;
        }
    }

    /** A page that things share. */
    record Shared(PageFrame frame, List<Put> puts) {
        Shared {
            puts = List.copyOf(puts);
        }
    }

    /** A piece spread over pages that all look like {@code frame}. */
    record Spread(PageFrame frame, Item item, Tiling tiling, Joins joins) {}

    /** The room of the map; without width if there is to be none. */
    record MapRoom(Box box) {
        boolean present() {
            return box.width() > 0;
        }
    }
}
