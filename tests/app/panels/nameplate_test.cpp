#include "app/desktop/panels/nameplate.h"
#include "app/desktop/panels/quantity_field.h"
#include "app/desktop/panels/text_field.h"
#include "app/desktop/preferences.h"
#include "core/parts/part_kind.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTemporaryDir>
#include <QTest>

using namespace pumpwright;

namespace {

/// A Nameplate on the van's circuit, in a window so that focus works.
struct Bench {
    QTemporaryDir folder;
    Document document;
    Selection selection;
    Preferences preferences{folder.filePath(QStringLiteral("settings.ini"))};
    Nameplate nameplate{document, selection, preferences};

    Bench() {
        CircuitBuilder builder = vanVacuumSide();
        document.startNew(addPumpFeed(builder).build());
        nameplate.show();
        REQUIRE(QTest::qWaitForWindowExposed(&nameplate));
    }

    QuantityField& quantity(const char* key) {
        auto* field = qobject_cast<QuantityField*>(nameplate.field(QString::fromLatin1(key)));
        REQUIRE(field != nullptr);
        return *field;
    }
    TextField& text(const char* key) {
        auto* field = qobject_cast<TextField*>(nameplate.field(QString::fromLatin1(key)));
        REQUIRE(field != nullptr);
        return *field;
    }
    void type(QuantityField& field, const QString& text) {
        field.editor().setFocus();
        field.editor().selectAll();
        QTest::keyClicks(&field.editor(), text);
        QTest::keyClick(&field.editor(), Qt::Key_Return);
    }
    const Wire& wire(const char* id) { return document.circuit().wires.at(WireId{id}); }
};

} // namespace

TEST_CASE("typing a gauge changes the wire and is one step to undo", "[panels][nameplate]") {
    Bench bench;
    bench.selection.select({{}, {WireId{"w2"}}, {}});
    const double before_m2 = bench.wire("w2").area_m2;

    bench.type(bench.quantity("area_m2"), QStringLiteral("18 AWG"));
    // ASTM B258: 18 AWG is 0.8231 mm²
    CHECK(bench.wire("w2").area_m2 == Approx(0.8231e-6).epsilon(1e-3));
    CHECK(bench.document.undoStack().count() == 1);
    CHECK(bench.document.undoStack().undoText().contains(QStringLiteral("W2")));

    bench.document.undoStack().undo();
    CHECK(bench.wire("w2").area_m2 == before_m2);
    CHECK(bench.quantity("area_m2").editor().text() == QStringLiteral("2.5 mm²"));
}

TEST_CASE("a decimal comma is read and shown again with its unit", "[panels][nameplate]") {
    Bench bench;
    bench.selection.select({{}, {WireId{"w2"}}, {}});
    bench.type(bench.quantity("area_m2"), QStringLiteral("0,75 mm²"));
    CHECK(bench.wire("w2").area_m2 == Approx(0.75e-6));
    CHECK(bench.quantity("area_m2").editor().text() == QStringLiteral("0.75 mm²"));
}

TEST_CASE("a second visit to a field is a step of its own", "[panels][nameplate]") {
    Bench bench;
    bench.selection.select({{}, {WireId{"w2"}}, {}});
    bench.type(bench.quantity("area_m2"), QStringLiteral("4"));
    bench.type(bench.quantity("area_m2"), QStringLiteral("6"));
    CHECK(bench.document.undoStack().count() == 2);
    bench.document.undoStack().undo();
    CHECK(bench.wire("w2").area_m2 == Approx(4e-6));
}

TEST_CASE("a value out of range is refused with the allowed range and the old one comes back",
          "[panels][nameplate]") {
    Bench bench;
    bench.selection.select({{PartId{"K1"}}, {}, {}});
    QuantityField& coil = bench.quantity("coilResistance_ohm");
    const QString before = coil.editor().text();
    bench.type(coil, QStringLiteral("9e12"));
    CHECK(coil.editor().text() == before);
    CHECK(coil.message().contains(QStringLiteral("Allowed")));
    CHECK(coil.message().contains(QStringLiteral("Ω")));
    // "9" was in range on the way to the refused text.
    const Part& relay = bench.document.circuit().parts.at(PartId{"K1"});
    CHECK(kindOf(relay).value(relay, "coilResistance_ohm") == Approx(90));
}

TEST_CASE("nonsense is refused and says what was expected", "[panels][nameplate]") {
    Bench bench;
    bench.selection.select({{}, {WireId{"w2"}}, {}});
    QuantityField& area = bench.quantity("area_m2");
    bench.type(area, QStringLiteral("thick"));
    CHECK_FALSE(area.message().isEmpty());
    CHECK(bench.wire("w2").area_m2 == Approx(2.5e-6));
    CHECK(area.editor().text() == QStringLiteral("2.5 mm²"));
}

TEST_CASE("several wires take one new value in one step", "[panels][nameplate]") {
    Bench bench;
    bench.selection.select({{}, {WireId{"w1"}, WireId{"w2"}, WireId{"w3"}}, {}});
    QuantityField& area = bench.quantity("area_m2");
    CHECK(area.editor().text().isEmpty());
    CHECK(area.editor().placeholderText() == QStringLiteral("several values"));

    bench.type(area, QStringLiteral("4 mm²"));
    for (const char* id : {"w1", "w2", "w3"}) {
        CHECK(bench.wire(id).area_m2 == Approx(4e-6));
    }
    CHECK(bench.document.undoStack().count() == 1);
    bench.document.undoStack().undo();
    CHECK(bench.wire("w1").area_m2 == Approx(6e-6));
    CHECK(bench.wire("w2").area_m2 == Approx(2.5e-6));
}

TEST_CASE("a wire's colour is chosen from the list or typed as two colours", "[panels][nameplate]") {
    Bench bench;
    bench.selection.select({{}, {WireId{"w1"}}, {}});
    TextField& colour = bench.text("colour");
    QLineEdit* editor = colour.choices()->lineEdit();
    editor->setFocus();
    editor->selectAll();
    QTest::keyClicks(editor, QStringLiteral("rdbu"));
    QTest::keyClick(editor, Qt::Key_Return);
    CHECK(bench.wire("w1").colour == "RDBU");

    editor->selectAll();
    QTest::keyClicks(editor, QStringLiteral("XX"));
    QTest::keyClick(editor, Qt::Key_Return);
    CHECK(bench.wire("w1").colour == "RDBU");
    CHECK(colour.message().contains(QStringLiteral("IEC 60757")));
}

TEST_CASE("a choice of a part is one step", "[panels][nameplate]") {
    Bench bench;
    bench.selection.select({{PartId{"K1"}}, {}, {}});
    QComboBox* choices = bench.text("suppression").choices();
    const int diode = choices->findData(QStringLiteral("diode"));
    REQUIRE(diode >= 0);
    choices->setFocus();
    while (choices->currentIndex() < diode) {
        QTest::keyClick(choices, Qt::Key_Down);
    }
    CHECK(bench.document.circuit().parts.at(PartId{"K1"}).choices.at("suppression") == "diode");
    bench.document.undoStack().undo();
    CHECK(bench.document.circuit().parts.at(PartId{"K1"}).choices.count("suppression") == 0);
}

TEST_CASE("a reference that another part has is taken with a warning", "[panels][nameplate]") {
    Bench bench;
    bench.selection.select({{PartId{"X1"}}, {}, {}});
    TextField& reference = bench.text("reference");
    CHECK(reference.message().isEmpty());
    reference.editor()->setFocus();
    reference.editor()->selectAll();
    QTest::keyClicks(reference.editor(), QStringLiteral("X2"));
    CHECK(bench.document.circuit().parts.at(PartId{"X1"}).reference == "X2");
    CHECK(reference.message().contains(QStringLiteral("X2")));
}

TEST_CASE("vacuum is shown in the unit that the user prefers, with the other beside it",
          "[panels][nameplate]") {
    Bench bench;
    bench.selection.select({{PartId{"B1"}}, {}, {}});
    QuantityField& setPoint = bench.quantity("setPoint_Pa");
    CHECK(setPoint.editor().text() == QStringLiteral("50 kPa"));
    bench.preferences.setVacuumUnit(QStringLiteral("inHg"));
    CHECK(setPoint.editor().text().endsWith(QStringLiteral("inHg")));

    bench.type(setPoint, QStringLiteral("15"));
    // 1 inHg = 3386.389 Pa [NIST SP 811, conventional]
    CHECK(bench.document.circuit().parts.at(PartId{"B1"}).values.at("setPoint_Pa") ==
          Approx(15 * 3386.389).epsilon(1e-5));
}

TEST_CASE("different kinds of parts say so", "[panels][nameplate]") {
    Bench bench;
    bench.selection.select({{PartId{"K1"}, PartId{"M1"}}, {}, {}});
    const auto* heading = bench.nameplate.findChild<QLabel*>(QStringLiteral("nameplateHeading"));
    REQUIRE(heading != nullptr);
    CHECK(heading->text() == QStringLiteral("2 parts of different kinds"));
}

TEST_CASE("with nothing selected the circuit's own limits are set, each in one step that names it",
          "[panels][nameplate]") {
    Bench bench;
    const auto limits = [&]() -> const ProjectLimits& { return bench.document.circuit().limits; };
    bench.type(bench.quantity("voltageDropShare"), QStringLiteral("3 %"));
    CHECK(limits().voltageDropShare == Approx(0.03));
    CHECK(bench.document.undoStack().count() == 1);
    CHECK(bench.document.undoStack().undoText().contains(QStringLiteral("voltage drop allowed")));
    CHECK(bench.document.undoStack().undoText().contains(QStringLiteral("3 %")));

    bench.type(bench.quantity("ambient_K"), QStringLiteral("60 °C"));
    bench.type(bench.quantity("leastBundled"), QStringLiteral("7"));
    bench.type(bench.quantity("continuousFuseShare"), QStringLiteral("75 %"));
    bench.type(bench.quantity("lowestSupply_V"), QStringLiteral("9 V"));
    bench.type(bench.quantity("reservePresses"), QStringLiteral("3"));
    CHECK(limits().ambient_K == Approx(333.15));
    CHECK(limits().leastBundled == 7);
    CHECK(limits().continuousFuseShare == Approx(0.75));
    CHECK(limits().lowestSupply_V == Approx(9));
    CHECK(limits().reservePresses == 3);
    CHECK(bench.nameplate.field(QStringLiteral("parked_s")) != nullptr);
    CHECK(bench.nameplate.field(QStringLiteral("drivenPerYear_s")) != nullptr);
    while (bench.document.undoStack().canUndo()) {
        bench.document.undoStack().undo();
    }
    CHECK(limits() == ProjectLimits());
}

TEST_CASE("Esc takes back what was typed", "[panels][nameplate]") {
    Bench bench;
    bench.selection.select({{}, {WireId{"w2"}}, {}});
    QuantityField& area = bench.quantity("area_m2");
    area.editor().setFocus();
    area.editor().selectAll();
    QTest::keyClicks(&area.editor(), QStringLiteral("6 mm²"));
    CHECK(bench.wire("w2").area_m2 == Approx(6e-6));
    QTest::keyClick(&area.editor(), Qt::Key_Escape);
    CHECK(bench.wire("w2").area_m2 == Approx(2.5e-6));
    CHECK(area.editor().text() == QStringLiteral("2.5 mm²"));
}

TEST_CASE("a refused value leaves several different wires as they were", "[panels][nameplate]") {
    Bench bench;
    bench.selection.select({{}, {WireId{"w1"}, WireId{"w2"}}, {}});
    bench.type(bench.quantity("area_m2"), QStringLiteral("9e9"));
    CHECK(bench.wire("w1").area_m2 == Approx(6e-6));
    CHECK(bench.wire("w2").area_m2 == Approx(2.5e-6));
    CHECK(bench.document.undoStack().count() == 0);
}
