#include "app/desktop/panels/plan_table_model.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

using namespace pumpwright;

namespace {

DrivePlan planWithPresses() {
    DrivePlan plan;
    plan.presses = {{5, 1.5, 100, 0.2}, {20, 2, 150, 0.2}, {40, 1, 80, 0.2}};
    return plan;
}

/// A model that gives its edits back to itself, as the document does.
struct Loop {
    PlanTableModel model;
    QAbstractItemModelTester tester{&model, QAbstractItemModelTester::FailureReportingMode::Warning};
    DrivePlan plan;

    Loop(PlanTable table, DrivePlan start) : model(std::move(table), ShownUnits{}), plan(std::move(start)) {
        model.setPlan(plan);
        QObject::connect(&model, &PlanTableModel::planEdited, &model, [this](const DrivePlan& edited) {
            plan = edited;
            model.setPlan(plan);
        });
    }
    QString cell(int row, int column) const {
        return model.index(row, column).data(Qt::DisplayRole).toString();
    }
};

} // namespace

TEST_CASE("presses are shown with units and edited in place", "[panels][plan]") {
    Loop loop(pressTable(), planWithPresses());
    CHECK(loop.model.rowCount() == 3);
    CHECK(loop.cell(0, 0) == QStringLiteral("5 s"));
    CHECK(loop.cell(1, 2) == QStringLiteral("150 N"));
    CHECK(loop.model.setData(loop.model.index(1, 2), QStringLiteral("40 lbf"), Qt::EditRole));
    // 1 lbf = 4.4482216152605 N exactly [NIST SP 811]
    CHECK(loop.plan.presses[1].force_N == Approx(40 * 4.4482216152605));
}

TEST_CASE("a press moved in time takes its place in the order", "[panels][plan]") {
    Loop loop(pressTable(), planWithPresses());
    REQUIRE(loop.model.setData(loop.model.index(2, 0), QStringLiteral("10 s"), Qt::EditRole));
    CHECK(loop.plan.presses[1].at_s == Approx(10));
    CHECK(loop.plan.presses[1].force_N == Approx(80));
    CHECK(loop.cell(1, 0) == QStringLiteral("10 s"));
}

TEST_CASE("a value out of range is refused with the range and changes nothing", "[panels][plan]") {
    Loop loop(pressTable(), planWithPresses());
    QSignalSpy refused(&loop.model, &PlanTableModel::refused);
    CHECK_FALSE(loop.model.setData(loop.model.index(0, 2), QStringLiteral("1e6"), Qt::EditRole));
    REQUIRE(refused.count() == 1);
    CHECK(refused.front().front().toString().contains(QStringLiteral("Allowed")));
    CHECK(loop.plan == planWithPresses());
}

TEST_CASE("presses are added after the last and taken away", "[panels][plan]") {
    Loop loop(pressTable(), planWithPresses());
    CHECK(loop.model.addRow().isEmpty());
    REQUIRE(loop.plan.presses.size() == 4);
    CHECK(loop.plan.presses[3].at_s == Approx(50));
    loop.model.removeRowAt(0);
    REQUIRE(loop.plan.presses.size() == 3);
    CHECK(loop.plan.presses[0].at_s == Approx(20));
    loop.model.removeRowAt(7);
    CHECK(loop.plan.presses.size() == 3);
}

TEST_CASE("a switch move needs a hand switch, and chooses among them", "[panels][plan]") {
    Loop without(switchMoveTable(Circuit{}), DrivePlan{});
    CHECK_FALSE(without.model.addRow().isEmpty());
    CHECK(without.plan.switchMoves.empty());

    const Circuit circuit = CircuitBuilder().part("hand-switch", "S1").part("hand-switch", "S2").build();
    Loop loop(switchMoveTable(circuit), DrivePlan{});
    REQUIRE(loop.model.addRow().isEmpty());
    CHECK(loop.plan.switchMoves.front().part == PartId{"S1"});
    REQUIRE(loop.model.setData(loop.model.index(0, 1), QStringLiteral("S2"), Qt::EditRole));
    REQUIRE(loop.model.setData(loop.model.index(0, 2), QStringLiteral("off"), Qt::EditRole));
    CHECK(loop.plan.switchMoves.front().part == PartId{"S2"});
    CHECK_FALSE(loop.plan.switchMoves.front().on);
}

TEST_CASE("charging spans and altitude points are added one after the other", "[panels][plan]") {
    Loop charging(chargingTable(), DrivePlan{});
    charging.model.addRow();
    charging.model.addRow();
    REQUIRE(charging.plan.charging.size() == 2);
    CHECK(charging.plan.charging[1].from_s == charging.plan.charging[0].to_s);

    Loop altitude(altitudeTable(), DrivePlan{});
    altitude.model.addRow();
    REQUIRE(altitude.model.setData(altitude.model.index(0, 1), QStringLiteral("1500 m"), Qt::EditRole));
    CHECK(altitude.plan.altitude[0].altitude_m == Approx(1500));
}
