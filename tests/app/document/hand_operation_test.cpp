#include "app/desktop/document/document.h"
#include "app/desktop/document/hand_operation.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

#include <QSignalSpy>
#include <QTest>

using namespace pumpwright;

namespace {

/// The van's pump behind a hand switch, and a brake lamp on a pedal switch.
Circuit switchedVan() {
    CircuitBuilder builder = vanVacuumSide();
    addPumpFeed(builder, {{"suppression", "diode"}})
        .part("hand-switch", "S1")
        .part("pedal-switch", "S2")
        .part("ground", "X4")
        .part("lamp", "P1")
        .wire("F1.2", "S1.1", 0.75e-6)
        .wire("S1.2", "K1.86", 0.75e-6)
        .wire("F1.2", "S2.1", 0.75e-6)
        .wire("S2.2", "P1.1", 0.75e-6)
        .wire("P1.2", "X4.31", 0.75e-6);
    return builder.plan(standingPlan(60)).build();
}

struct Bench {
    Document document;
    HandOperation operation{document};

    Bench() { document.startNew(switchedVan()); }

    bool shows(const PartId& part, bool closed) {
        return QTest::qWaitFor(
            [&] {
                const auto recent = operation.recent();
                const Channel* contact = recent ? recent->part(part, probe::kContact) : nullptr;
                return contact != nullptr && (contact->at(operation.time_s()) > 0.5) == closed;
            },
            20000);
    }
};

} // namespace

TEST_CASE("a switch moved by hand pulls the relay in while the drive goes on", "[document][hand]") {
    Bench bench;
    const QSignalSpy turnedOn(&bench.operation, &HandOperation::onChanged);
    bench.operation.begin();
    CHECK(turnedOn.count() == 1);
    REQUIRE(bench.shows({"K1"}, false));
    bench.operation.moveSwitch({"S1"}, true);
    CHECK(bench.operation.isSwitchOn({"S1"}));
    CHECK(bench.shows({"K1"}, true));
    bench.operation.moveSwitch({"S1"}, false);
    CHECK(bench.shows({"K1"}, false));
    CHECK(bench.operation.failure().isEmpty());
    CHECK(bench.operation.plan().switchMoves.size() == 2);
}

TEST_CASE("the pedal is pressed as long as it is held", "[document][hand]") {
    Bench bench;
    bench.operation.begin();
    REQUIRE(bench.shows({"S2"}, false));
    bench.operation.pressPedal();
    CHECK(bench.operation.isPedalPressed());
    CHECK(bench.shows({"S2"}, true));
    bench.operation.releasePedal();
    CHECK(bench.shows({"S2"}, false));
    REQUIRE(bench.operation.plan().presses.size() == 1);
    CHECK(bench.operation.plan().presses.front().hold_s > 0);
}

TEST_CASE("time by hand is the clock's, where the machine keeps up", "[document][hand]") {
    Bench bench;
    bench.operation.begin();
    REQUIRE(QTest::qWaitFor([&] { return bench.operation.time_s() > 0.2; }, 20000));
    QElapsedTimer clock;
    clock.start();
    const double from_s = bench.operation.time_s();
    QTest::qWait(1500);
    const double passed_s = static_cast<double>(clock.elapsed()) / 1000;
    // Never ahead of the clock, but for the slice of 0.1 s that was under way when the clock was read.
    CHECK(bench.operation.time_s() - from_s <= passed_s + 0.15);
    CHECK(bench.operation.time_s() > from_s);
    CHECK(bench.operation.speed() <= 1.1);
}

TEST_CASE("an edit begins anew, with the switches as they stand", "[document][hand]") {
    Bench bench;
    bench.operation.begin();
    bench.operation.moveSwitch({"S1"}, true);
    REQUIRE(bench.shows({"K1"}, true));
    REQUIRE(QTest::qWaitFor([&] { return bench.operation.time_s() > 0.5; }, 20000));
    Part fuse = bench.document.circuit().parts.at({"F1"});
    fuse.values["rating_A"] = 20;
    bench.document.apply({"Set F1", {putPart({"F1"}, fuse)}});
    CHECK(bench.operation.isOn());
    CHECK(bench.operation.time_s() == 0);
    CHECK(bench.operation.isSwitchOn({"S1"}));
    CHECK(bench.shows({"K1"}, true));
}

TEST_CASE("ended, it shows nothing and moves nothing", "[document][hand]") {
    Bench bench;
    bench.operation.begin();
    REQUIRE(bench.shows({"K1"}, false));
    bench.operation.end();
    CHECK_FALSE(bench.operation.isOn());
    CHECK(bench.operation.recent() == nullptr);
    bench.operation.moveSwitch({"S1"}, true);
    bench.operation.pressPedal();
    CHECK_FALSE(bench.operation.isSwitchOn({"S1"}));
    CHECK_FALSE(bench.operation.isPedalPressed());
    QTest::qWait(100);
    CHECK(bench.operation.recent() == nullptr); // what was under way is not shown any more
}

TEST_CASE("hands move switches, feet the pedal and what hangs on it", "[document][hand]") {
    const Circuit circuit = switchedVan();
    CHECK(controlOf(circuit.parts.at({"S1"})) == Control::Switch);
    CHECK(controlOf(circuit.parts.at({"S2"})) == Control::Pedal);
    CHECK(controlOf(circuit.parts.at({"A1"})) == Control::Pedal);
    CHECK(controlOf(circuit.parts.at({"K1"})) == Control::None);
    CHECK(controlOf(circuit.parts.at({"B1"})) == Control::None);
}
