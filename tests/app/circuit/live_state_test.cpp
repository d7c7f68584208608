#include "app/desktop/circuit/live_state.h"
#include "tests/support/catch.h"
#include "tests/support/recording_builder.h"
#include "tests/support/van_circuit.h"

using namespace pumpwright;

namespace {

Circuit van() {
    CircuitBuilder builder = vanVacuumSide();
    return addPumpFeed(builder).build();
}

} // namespace

TEST_CASE("contacts, coils and currents show what the recording holds at the cursor", "[live]") {
    const DriveResult drive = RecordingBuilder(10)
                                  .part("K1", probe::kContact, {{0, 0}, {2, 0}, {2, 1}, {5, 1}, {5, 0}})
                                  .part("K1", probe::kEnergised, {{0, 0}, {2, 0}, {2, 1}, {5, 1}, {5, 0}})
                                  .wire("w4", probe::kCurrent, {{0, 0}, {2, 0}, {2, -5.5}, {5, -5.5}, {5, 0}})
                                  .terminal("G1.30", {{0, 12.5}, {10, 12.5}})
                                  .drive();
    const Circuit circuit = van();
    const LiveState before = liveState(circuit, drive.recording, 1);
    CHECK(before.parts.at({"K1"}).known);
    CHECK_FALSE(before.parts.at({"K1"}).closed);
    CHECK(before.wires.at({"w2"}).live); // from G1.30: voltage without current
    CHECK(before.wires.at({"w2"}).current_A == 0.0);
    CHECK_FALSE(before.wires.at({"w4"}).live);

    const LiveState during = liveState(circuit, drive.recording, 3);
    CHECK(during.parts.at({"K1"}).closed);
    CHECK(during.parts.at({"K1"}).energised);
    CHECK(during.wires.at({"w4"}).current_A == Approx(-5.5));
    CHECK(during.wires.at({"w4"}).live);
}

TEST_CASE("booster and vacuum switch show their vacuum, the pump does not", "[live]") {
    const DriveResult drive = RecordingBuilder(10)
                                  .port("A1.vacuum", {{0, 61'234}, {10, 61'234}})
                                  .port("B1.vacuum", {{0, 60'000}, {10, 60'000}})
                                  .port("M1.inlet", {{0, 60'000}, {10, 60'000}})
                                  .drive();
    const LiveState state = liveState(van(), drive.recording, 5);
    CHECK(state.parts.at({"A1"}).reading == QStringLiteral("61.2 kPa"));
    CHECK(state.parts.at({"B1"}).reading == QStringLiteral("60 kPa"));
    CHECK(state.parts.at({"M1"}).reading.isEmpty());
}

TEST_CASE("a fuse is whole until its share of opening is used up", "[live]") {
    const DriveResult drive =
        RecordingBuilder(10).part("F1", probe::kOpenShare, {{0, 0}, {6, 1}, {10, 1}}).drive();
    const Circuit circuit = van();
    CHECK(liveState(circuit, drive.recording, 3).parts.at({"F1"}).closed);
    const PartLive blown = liveState(circuit, drive.recording, 8).parts.at({"F1"});
    CHECK_FALSE(blown.closed);
    CHECK(blown.reading == QStringLiteral("blown"));
}

TEST_CASE("before any drive contacts are as at rest and fuses whole", "[live]") {
    const LiveState rest = restState(van());
    CHECK(rest.parts.at({"F1"}).closed);
    CHECK_FALSE(rest.parts.at({"K1"}).closed);
    CHECK_FALSE(rest.parts.at({"K1"}).known);
}

TEST_CASE("readings have three digits", "[live]") {
    CHECK(readingText(0.42741, QuantityKind::Current) == readingText(0.427, QuantityKind::Current));
    CHECK(readingText(0, QuantityKind::Current) == QStringLiteral("0 A"));
}

TEST_CASE("a run that stopped before its first sample shows the state at rest", "[live]") {
    Recording recording;
    recording.channels = {{{Subject::Part, "K1", probe::kContact}, {}, {}, {}},
                          {{Subject::Port, "B1", "vacuum"}, {}, {}, {}},
                          {{Subject::Wire, "w1", probe::kCurrent}, {}, {}, {}}};
    const LiveState state = liveState(van(), recording, 1);
    CHECK_FALSE(state.parts.at({"K1"}).closed);
    CHECK(state.parts.at({"B1"}).reading.isEmpty());
    CHECK_FALSE(state.wires.at({"w1"}).live);
}

TEST_CASE("a breath of pressure in the booster reads as no vacuum", "[live]") {
    const DriveResult drive = RecordingBuilder(10).port("A1.vacuum", {{0, -7.6}, {10, -7.6}}).drive();
    const QString reading = liveState(van(), drive.recording, 5).parts.at({"A1"}).reading;
    CHECK(reading == readingText(0, QuantityKind::GaugeVacuum));
    CHECK_FALSE(reading.contains(u'-'));
}

TEST_CASE("a relay that switches thirty times a second is shown as chattering while the drive plays, its "
          "wires as lit",
          "[live][flashing]") {
    RecordingBuilder::Samples contact{{0, 0}};
    RecordingBuilder::Samples current{{0, 0}};
    for (int i = 0; i < 120; ++i) {
        const double time_s = 4 + i / 60.0;
        for (const int side : {i + 1, i}) {
            contact.push_back({time_s, (side + 1) % 2});
            current.push_back({time_s, 6.0 * ((side + 1) % 2)});
        }
    }
    const DriveResult drive = RecordingBuilder(10)
                                  .part("K1", probe::kContact, contact)
                                  .wire("w4", probe::kCurrent, current)
                                  .drive();
    const Circuit circuit = van();
    const LiveState played = liveState(circuit, drive.recording, 5, 1);
    CHECK(played.parts.at({"K1"}).flashes);
    CHECK(played.parts.at({"K1"}).reading == QStringLiteral("chattering"));
    CHECK(played.wires.at({"w4"}).live);
    CHECK(played.wires.at({"w4"}).current_A == Approx(3).margin(0.1));
    CHECK_FALSE(liveState(circuit, drive.recording, 5, 0).parts.at({"K1"}).flashes);
    CHECK_FALSE(liveState(circuit, drive.recording, 5, 0.01).parts.at({"K1"}).flashes);
    CHECK_FALSE(liveState(circuit, drive.recording, 1, 1).parts.at({"K1"}).flashes);
}

TEST_CASE("a pump that runs now and then does not chatter however fast the drive is played",
          "[live][flashing]") {
    RecordingBuilder::Samples contact{{0, 0}};
    for (int i = 0; i < 8; ++i) {
        contact.push_back({10.0 + 10 * i, i % 2});
        contact.push_back({10.0 + 10 * i, (i + 1) % 2});
    }
    const DriveResult drive = RecordingBuilder(100).part("K1", probe::kContact, contact).drive();
    const PartLive fast = liveState(van(), drive.recording, 45, 60).parts.at({"K1"});
    CHECK(fast.flashes);
    CHECK(fast.reading == QStringLiteral("switching"));
}

TEST_CASE("at every speed no part changes its look more than twice a second", "[live][flashing]") {
    RecordingBuilder::Samples contact{{0, 0}};
    bool closed = false;
    // bursts of chatter from lively to slow, with pauses between
    for (double time_s = 1, gap_s = 0.01; time_s < 58; time_s += gap_s) {
        contact.push_back({time_s, closed ? 1.0 : 0.0});
        closed = !closed;
        contact.push_back({time_s, closed ? 1.0 : 0.0});
        gap_s = gap_s > 1.5 ? 0.01 : gap_s * 1.13;
    }
    const DriveResult drive = RecordingBuilder(60).part("K1", probe::kContact, contact).drive();
    const Circuit circuit = van();
    constexpr double kFrame_s = 1.0 / 60;
    for (const double pace : {0.1, 1.0, 10.0, 60.0}) {
        std::vector<double> changes_s;
        PartLive before = liveState(circuit, drive.recording, 0, pace).parts.at({"K1"});
        for (int frame = 1; frame * kFrame_s * pace < 60; ++frame) {
            const PartLive now =
                liveState(circuit, drive.recording, frame * kFrame_s * pace, pace).parts.at({"K1"});
            if (now.closed != before.closed) {
                changes_s.push_back(frame * kFrame_s);
                const auto inLastSecond =
                    std::count_if(changes_s.begin(), changes_s.end(),
                                  [&](double one_s) { return one_s > changes_s.back() - 1; });
                CAPTURE(pace, frame);
                CHECK(inLastSecond <= 2);
            }
            before = now;
        }
    }
}

TEST_CASE("a timer that runs shows the time that is left, in tenths", "[live]") {
    const DriveResult drive =
        RecordingBuilder(10).part("K1", probe::kRemaining, {{0, 5}, {5, 0}, {10, 0}}).drive();
    CHECK(liveState(van(), drive.recording, 1.77).parts.at({"K1"}).reading == QStringLiteral("3.3 s"));
    CHECK(liveState(van(), drive.recording, 6).parts.at({"K1"}).reading.isEmpty());
}

TEST_CASE("a diaphragm shows how far it has travelled", "[live]") {
    const DriveResult drive =
        RecordingBuilder(10).part("A1", probe::kTravel, {{0, 0}, {4, 0}, {5, 0.015}, {10, 0.06}}).drive();
    const Circuit circuit = van(); // travels 30 mm at most
    CHECK(liveState(circuit, drive.recording, 2).parts.at({"A1"}).travel == 0.0);
    CHECK(liveState(circuit, drive.recording, 5).parts.at({"A1"}).travel == Approx(0.5));
    CHECK(liveState(circuit, drive.recording, 10).parts.at({"A1"}).travel == Approx(1));
}

TEST_CASE("as it happens, a contact that switches quickly is said to chatter from its third change on",
          "[live]") {
    const Circuit circuit = van();
    const auto now = [&](RecordingBuilder::Samples samples, double time_s) {
        DriveResult drive = RecordingBuilder(time_s).part("K1", probe::kContact, std::move(samples)).drive();
        return liveStateNow(circuit, drive.recording).parts.at({"K1"});
    };
    CHECK(now({{0, 0}, {2, 1}}, 2.01).closed);
    CHECK_FALSE(now({{0, 0}, {2, 1}, {2.03, 0}}, 2.04).flashes);
    const PartLive chatters = now({{0, 0}, {2, 1}, {2.03, 0}, {2.06, 1}}, 2.07);
    CHECK(chatters.flashes);
    CHECK(chatters.reading == QStringLiteral("chattering"));
    // Half a second of rest, and it is shown again as it is.
    const PartLive rests = now({{0, 0}, {2, 1}, {2.03, 0}, {2.06, 1}}, 2.6);
    CHECK_FALSE(rests.flashes);
    CHECK(rests.closed);
}
