#include "app/desktop/circuit/circuit_view.h"
#include "app/desktop/panels/parts_drawer.h"
#include "tests/app/window/first_circuit.h"

#include <QLineEdit>
#include <QTreeView>

using namespace pumpwright;

TEST_CASE("the beginning of what a part is called finds the first part that is called so",
          "[window][parts]") {
    PartsDrawer drawer(wholeCatalogue());
    QSignalSpy placed(&drawer, &PartsDrawer::placeRequested);
    for (const auto& [word, kind] : std::initializer_list<std::pair<const char*, const char*>>{
             {"bat", "supply"},
             {"fus", "fuse"},
             {"swi", "hand-switch"},
             {"vac", "vacuum-switch"},
             {"tim", "timer"},
             {"rel", "relay"}, // and not a timer with delay on release
             {"solid", "solid-state-relay"},
             {"dio", "diode"}, // and not a relay with one inside
             {"zen", "zener"},
             {"cap", "capacitor"},
             {"res", "resistor"}, // and not a reservoir, which stands below
             {"pum", "pump"},
             {"lam", "lamp"}, // and not the switch of a lamp
             {"buz", "buzzer"},
             {"boo", "booster"},
             {"rese", "reservoir"},
             {"che", "check-valve"},
             {"gro", "ground"}, // and not a check valve with grommet
             {"spl", "splice"},
             {"con", "connector"}}) {
        INFO(word);
        drawer.search().clear();
        QTest::keyClicks(&drawer.search(), QString::fromLatin1(word));
        QTest::keyClick(&drawer.search(), Qt::Key_Return);
        REQUIRE_FALSE(placed.empty());
        CHECK(placed.back().front().value<Part>().kind == kind);
    }
    CHECK(placed.count() == 20);
}

TEST_CASE("Ctrl with Return puts a found part where there is room, one step each, and goes on searching",
          "[window][parts]") {
    WindowBench bench(wholeCatalogue());
    auto* drawer = bench.window.findChild<PartsDrawer*>();
    drawer->search().setFocus();
    for (const char* word : {"fus", "rel", "rel"}) {
        QTest::keyClicks(&drawer->search(), QString::fromLatin1(word));
        QTest::keyClick(&drawer->search(), Qt::Key_Return, Qt::ControlModifier);
        CHECK(drawer->search().selectedText() == QString::fromLatin1(word)); // the next word replaces it
    }
    const Circuit& circuit = bench.window.document().circuit();
    CHECK(kindNames(circuit) == std::multiset<std::string>{"fuse", "relay", "relay"});
    CHECK(bench.window.document().undoStack().count() == 3);
    CHECK(bench.window.document().undoStack().undoText() == QStringLiteral("Place K2"));
    CHECK(bench.window.circuitView().activity() == CanvasActivity::Select);
    CHECK(bench.window.selection().objects().parts.size() == 1);
    std::set<std::pair<int, int>> places;
    for (const auto& [id, part] : circuit.parts) {
        CHECK(places.emplace(part.at.x, part.at.y).second);
    }
}
