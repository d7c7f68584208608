#include "core/checks/sneak_search.h"
#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

// The examples are those of the rule's page: faults that electricians know, common practice, no published
// source. The pattern behind them, current backwards through a branch that two circuits share, is what sneak
// analysis looks for (ECSS-Q-TM-40-04, from memory).

namespace {

std::optional<Finding> about(const Circuit& circuit, const char* part) {
    for (const Finding& finding : findings("sneak-path", circuit)) {
        if (finding.parts.front() == PartId{part}) {
            return finding;
        }
    }
    return std::nullopt;
}

/// Brake lamp P2 on pedal switch S2; vacuum switch B1 on the same fuse; both pull in K1. What joins the
/// lamp's wire with the coil is up to the test.
CircuitBuilder pedalAndVacuum() {
    CircuitBuilder builder = vanVacuumSide();
    addPumpFeed(builder, {{"suppression", "diode"}})
        .part("fuse", "F2")
        .part("pedal-switch", "S2", {{"make_A", 60}})
        .part("lamp", "P2", {{"ratedPower_W", 21}})
        .part("ground", "X7")
        .wire("G1.30", "F2.1", 1.5e-6, 0.15)
        .wire("F2.2", "S2.1", 1.5e-6, 1)
        .wire("S2.2", "P2.1", 1.5e-6, 1)
        .wire("P2.2", "X7.31", 1.5e-6, 1)
        .wire("F2.2", "B1.1", 1.5e-6, 1)
        .wire("B1.2", "K1.86", 1.5e-6, 1);
    return builder;
}

CircuitBuilder lampsLitByPump() {
    CircuitBuilder builder = pedalAndVacuum();
    builder.wire("P2.1", "K1.86", 1.5e-6, 2);
    return builder;
}

/// Lighting F3, S3, P3; a wire joins it with the pump's feed.
Circuit pumpRunByLamps(bool joined) {
    CircuitBuilder builder = soundVan();
    builder.part("fuse", "F3")
        .part("hand-switch", "S3")
        .part("lamp", "P3", {{"ratedPower_W", 21}})
        .part("ground", "X7")
        .wire("G1.30", "F3.1", 1.5e-6, 0.15)
        .wire("F3.2", "S3.1", 1.5e-6, 1)
        .wire("S3.2", "P3.1", 1.5e-6, 1)
        .wire("P3.2", "X7.31", 1.5e-6, 1);
    return joined ? builder.wire("P3.1", "M1.+", 1.5e-6, 1).build() : builder.build();
}

/// The pedal switches lamp P2 to ground, or feeds it; the trigger of timer K2 hangs on the wire between them.
Circuit timerOnLampWire(bool toGround) {
    CircuitBuilder builder;
    builder.part("supply", "G1")
        .part("fuse", "F2")
        .part("pedal-switch", "S2", {{"make_A", 60}})
        .part("lamp", "P2", {{"ratedPower_W", 21}})
        .part("timer", "K2")
        .part("ground", "X1")
        .wire("G1.31", "X1.31", 6e-6, 0.5)
        .wire("G1.30", "F2.1", 1.5e-6, 0.15)
        .wire("F2.2", "K2.15", 0.75e-6, 1)
        .wire("K2.31", "X1.31", 0.75e-6, 1);
    builder.wire("F2.2", toGround ? "P2.1" : "S2.1")
        .wire(toGround ? "P2.2" : "S2.2", toGround ? "S2.1" : "P2.1")
        .wire(toGround ? "S2.2" : "P2.2", "X1.31")
        .wire(toGround ? "S2.1" : "P2.1", "K2.S");
    return builder.build();
}

/// Tail lamp P3 on S3 and brake lamp P2 on S2 with the timer's trigger; both lamps on X7, or P3 on X8.
Circuit sharedBolt(bool shared) {
    CircuitBuilder builder;
    return builder.part("supply", "G1")
        .part("fuse", "F2")
        .part("fuse", "F3")
        .part("pedal-switch", "S2")
        .part("hand-switch", "S3")
        .part("lamp", "P2", {{"ratedPower_W", 21}})
        .part("lamp", "P3", {{"ratedPower_W", 5}})
        .part("timer", "K2")
        .part("ground", "X1")
        .part("ground", "X4")
        .part("ground", "X7")
        .part("ground", "X8")
        .wire("G1.31", "X1.31")
        .wire("G1.30", "F2.1")
        .wire("G1.30", "F3.1")
        .wire("F2.2", "S2.1")
        .wire("S2.2", "P2.1")
        .wire("P2.1", "K2.S")
        .wire("K2.31", "X4.31")
        .wire("F3.2", "S3.1")
        .wire("S3.2", "P3.1")
        .wire("P2.2", "X7.31")
        .wire("P3.2", shared ? "X7.31" : "X8.31")
        .build();
}

/// Two lamps on switches and fuses of their own, joined behind the switches or not.
Circuit twoLamps(bool joined, bool diode = false) {
    CircuitBuilder builder = switchedLamp();
    builder.part("fuse", "F2", {{"rating_A", 10}})
        .part("hand-switch", "S2", {{"make_A", 100}})
        .part("lamp", "P2", {{"ratedPower_W", 60}})
        .part("diode", "R2")
        .wire("G1.30", "F2.1", 2.5e-6, 0.1)
        .wire("F2.2", "S2.1", 2.5e-6)
        .wire("S2.2", "P2.1", 2.5e-6)
        .wire("P2.2", "X2.31", 2.5e-6);
    if (joined && diode) {
        builder.wire("P2.1", "R2.A", 2.5e-6).wire("R2.K", "P1.1", 2.5e-6);
    } else if (joined) {
        builder.wire("P1.1", "P2.1", 2.5e-6);
    }
    return builder.build();
}

/// `count` switches in parallel before a lamp, and two fuses in a row before them.
Circuit manySwitches(int count) {
    CircuitBuilder builder;
    builder.part("supply", "G1").part("fuse", "F1").part("fuse", "F2").part("lamp", "P1");
    builder.wire("G1.30", "F1.1").wire("F1.2", "F2.1").wire("P1.2", "G1.31");
    for (int i = 1; i <= count; ++i) {
        const std::string name = "S" + std::to_string(i);
        builder.part("hand-switch", name).wire("F2.2", name + ".1").wire(name + ".2", "P1.1");
    }
    return builder.build();
}

} // namespace

TEST_CASE("the vacuum switch lights the brake lamps over the relay's wire", "[checks][sneak-path][raises]") {
    const Circuit circuit = lampsLitByPump().build();
    const auto finding = about(circuit, "P2");
    REQUIRE(finding);
    CHECK(finding->word == SignalWord::Warning);
    CHECK(finding->what.english().find("B1 closed") != std::string::npos);
    CHECK(finding->what.english().find("S2 open") != std::string::npos);
    CHECK(finding->what.english().find("G1 plus – F2 – B1 – P2 – minus") != std::string::npos);
    checkComplete(*finding);
    checkRemedy(circuit, *finding);
}

TEST_CASE("a diode from the lamps to the relay keeps the pump off the lamps",
          "[checks][sneak-path][near-miss]") {
    CircuitBuilder builder = pedalAndVacuum();
    builder.part("diode", "R2").wire("P2.1", "R2.A", 1.5e-6, 1).wire("R2.K", "K1.86", 1.5e-6, 1);
    CHECK(findings("sneak-path", builder.build()).empty());
}

TEST_CASE("a relay that two switches on one fuse pull in is meant so", "[checks][sneak-path][near-miss]") {
    CHECK(findings("sneak-path", pedalAndVacuum().build()).empty());
    CircuitBuilder builder = soundVan();
    CHECK(findings("sneak-path",
                   builder.part("hand-switch", "S9").wire("F1.2", "S9.1").wire("S9.2", "K1.86").build())
              .empty());
}

TEST_CASE("the lighting switch runs the pump over a wire between the two", "[checks][sneak-path]") {
    const Circuit circuit = pumpRunByLamps(true);
    const auto pump = about(circuit, "M1");
    REQUIRE(pump);
    CHECK(pump->word == SignalWord::Warning);
    CHECK(pump->what.english().find("S3 closed") != std::string::npos);
    CHECK(pump->what.english().find("F3 – S3 – M1") != std::string::npos);
    CHECK(about(circuit, "P3").has_value()); // and the pump's relay lights the lamp
    CHECK(findings("sneak-path", pumpRunByLamps(false)).empty());
}

TEST_CASE("a timer's trigger is held in through the lamp that the pedal grounds", "[checks][sneak-path]") {
    const auto finding = about(timerOnLampWire(true), "K2");
    REQUIRE(finding);
    CHECK(finding->what.english().find("P2 – K2") != std::string::npos);
    CHECK(finding->value > 10); // 10 kΩ of the trigger against the filament: nearly all of the voltage
    checkComplete(*finding);
    CHECK(findings("sneak-path", timerOnLampWire(false)).empty());
}

TEST_CASE("a lost ground lets the tail lamp trigger the timer backwards through the brake lamp",
          "[checks][sneak-path]") {
    const Circuit circuit = sharedBolt(true);
    const auto finding = about(circuit, "K2");
    REQUIRE(finding);
    CHECK(finding->word == SignalWord::Caution);
    CHECK(finding->what.english().find("X7 off the body") != std::string::npos);
    CHECK(finding->what.english().find("F3 – S3 – P3 – P2 – K2") != std::string::npos);
    checkComplete(*finding);
    checkRemedy(circuit, *finding);
    CHECK(findings("sneak-path", sharedBolt(false)).empty());
}

TEST_CASE("a blown fuse does not put out a lamp that another circuit feeds", "[checks][sneak-path]") {
    const Circuit circuit = twoLamps(true);
    for (const char* lamp : {"P1", "P2"}) {
        const auto finding = about(circuit, lamp);
        REQUIRE(finding);
        checkComplete(*finding);
    }
    CHECK(findings("sneak-path", twoLamps(false)).empty());
}

TEST_CASE("a diode between two circuits is there on purpose", "[checks][sneak-path]") {
    CHECK(findings("sneak-path", twoLamps(true, true)).empty());
}

TEST_CASE("a coil that gets its drop-out voltage through a load stays in, with less it does not",
          "[checks][sneak-path][at-limit]") {
    // Coil 90 Ω in series with a resistor-like lamp of P watts at 12 V: R = 144/P. It holds with
    // 12.65 V · 90/(90 + R) or more.
    const auto inSeries = [](double power_W, double dropOut_V) {
        CircuitBuilder builder;
        return builder.part("supply", "G1")
            .part("fuse", "F1")
            .part("fuse", "F2")
            .part("hand-switch", "S1")
            .part("hand-switch", "S2")
            .part("lamp", "P1", {{"ratedPower_W", power_W}})
            .part("relay", "K1", {{"dropOutVoltage_V", dropOut_V}})
            .wire("G1.30", "F1.1")
            .wire("F1.2", "S1.1")
            .wire("S1.2", "K1.86")
            .wire("K1.85", "G1.31")
            .wire("G1.30", "F2.1")
            .wire("F2.2", "S2.1")
            .wire("S2.2", "P1.1")
            .wire("P1.2", "K1.86")
            .build();
    };
    const auto held = about(inSeries(1.2, 1.6), "K1");
    REQUIRE(held);
    const double voltage_V = held->value;
    CHECK(voltage_V == Approx(12.65 * 90 / (90 + 12.65 * 12 / 1.2)).epsilon(0.01));
    CHECK(about(inSeries(1.2, voltage_V - 0.05), "K1"));
    CHECK_FALSE(about(inSeries(1.2, voltage_V + 0.05), "K1"));
}

TEST_CASE("up to 2^16 combinations all are tried, beyond that a sample, and the finding says so",
          "[checks][sneak-path]") {
    CHECK(findings("sneak-path", manySwitches(14)).empty()); // with two fuses: 2^16
    const Finding finding = onlyFinding("sneak-path", manySwitches(15));
    CHECK(finding.word == SignalWord::Notice);
    CHECK(finding.value == Approx(131'072));
    CHECK(finding.limit == Approx(65'536));
    CHECK(finding.what.english().find("sample") != std::string::npos);
    checkComplete(finding);
}

TEST_CASE("a sample is the same each time", "[checks][sneak-path]") {
    const Circuit circuit = manySwitches(70);
    CHECK(findings("sneak-path", circuit).front().what == findings("sneak-path", circuit).front().what);
}
