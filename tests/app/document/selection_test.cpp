#include "app/desktop/document/selection.h"
#include "tests/support/catch.h"

#include <QSignalSpy>

using namespace pumpwright;

TEST_CASE("selecting the same again says nothing, showing it still asks the canvas", "[document]") {
    Selection selection;
    QSignalSpy changes(&selection, &Selection::changed);
    QSignalSpy shows(&selection, &Selection::showRequested);
    const SelectedObjects relay{{{"K1"}}, {}, {}};
    selection.select(relay);
    selection.select(relay);
    CHECK(changes.count() == 1);
    CHECK(shows.isEmpty());
    selection.show(relay);
    CHECK(changes.count() == 1);
    CHECK(shows.count() == 1);
    CHECK(selection.objects() == relay);
}
