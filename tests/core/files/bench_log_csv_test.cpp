#include "core/files/bench_log_csv.h"
#include "core/files/samples_csv.h"
#include "core/files/speed_trace_csv.h"
#include "core/simulate/drive.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

using namespace pumpwright;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

/// A booster that bleeds down, at an altitude with another ambient pressure.
Circuit booster(double altitude_m = 0) {
    DrivePlan plan;
    plan.duration_s = 10;
    plan.initialVacuum_Pa = 60e3;
    plan.altitude = {{0, altitude_m}};
    return CircuitBuilder().part("booster", "A1").plan(plan).build();
}

CsvNumbers tableOf(std::string_view text) {
    const auto table = parseCsvNumbers(text);
    REQUIRE(table);
    return *table;
}

BenchLog logOf(const Circuit& circuit, std::string_view text, std::initializer_list<const char*> columns,
               double offset_s = 0) {
    const CsvNumbers table = tableOf(text);
    LogReading reading = guessedReading(circuit, table);
    reading.timeOffset_s = offset_s;
    for (const char* column : columns) {
        REQUIRE(addToReading(reading, table, column));
    }
    const auto log = benchLog(circuit, table, reading);
    REQUIRE(log);
    return *log;
}

} // namespace

TEST_CASE("what the program writes of a drive is read back as a log without further words",
          "[files][bench-log]") {
    const Circuit circuit = booster();
    const DriveResult drive = simulateDrive(circuit);
    const BenchLog log = logOf(circuit, samplesCsv(circuit, drive.recording, 1), {});
    CHECK(log.traces.size() == drive.recording.channels.size());
    for (const LogTrace& trace : log.traces) {
        CAPTURE(trace.name);
        const Channel* channel = drive.recording.find(trace.key);
        REQUIRE(channel != nullptr);
        CHECK(trace.times_s.size() == 11);
        CHECK_THAT(trace.values[5], WithinRel(channel->at(5), 1e-6) || WithinAbs(channel->at(5), 1e-9));
    }
}

TEST_CASE("columns come in any order, with semicolons and decimal commas", "[files][bench-log]") {
    const BenchLog log = logOf(booster(), "p [kPa];x;Time (ms)\n50,5;1;0\n49,5;2;100\n", {"p=A1:vacuum"}, 2);
    REQUIRE(log.traces.size() == 1);
    CHECK(log.traces[0].key == ChannelKey{Subject::Port, "A1", "vacuum"});
    CHECK(log.traces[0].times_s == std::vector<double>{2, 2.1});
    CHECK_THAT(log.traces[0].values[1], WithinAbs(49.5e3, 1e-6));
}

TEST_CASE("a column is called by its name or its number, and its unit may be said", "[files][bench-log]") {
    const BenchLog log = logOf(booster(), "0,15\n1,14\n2,13\n", {"2=A1:vacuum in inHg"});
    CHECK_THAT(log.traces[0].values[0], WithinRel(15 * 3386.389, 1e-6)); // NIST SP 811, value from memory
    const BenchLog swapped = logOf(booster(), "9,0\n8,10\n", {"1=A1:vacuum in kPa", "2=time in min"});
    CHECK(swapped.traces[0].times_s == std::vector<double>{0, 600});
}

TEST_CASE("pressures below zero and absolute ones become vacuum", "[files][bench-log]") {
    const BenchLog gauge = logOf(booster(), "time,p\n0,-60\n1,-59\n", {"p=A1:vacuum in kPa"});
    CHECK_THAT(gauge.traces[0].values[0], WithinAbs(60e3, 1e-6));
    // ISO 2533: 79 501 Pa at 2000 m (value from memory of its table).
    const BenchLog absolute = logOf(booster(2000), "time,p\n0,30\n1,31\n", {"p=A1:vacuum in kPa abs"});
    CHECK_THAT(absolute.traces[0].values[0], WithinAbs(79501 - 30e3, 20));
}

TEST_CASE("rows out of order are sorted, cells without a number left out", "[files][bench-log]") {
    const BenchLog log = logOf(booster(), "time,p\n2,3\n0,1\n1,\n3,x\n", {"p=A1:vacuum in Pa"});
    CHECK(log.traces[0].times_s == std::vector<double>{0, 2});
    CHECK(log.traces[0].values == std::vector<double>{1, 3});
}

TEST_CASE("a log that does not fit says what is wrong", "[files][bench-log]") {
    const CsvNumbers table = tableOf("time,p\n0,1\n1,2\n");
    LogReading reading = guessedReading(booster(), table);
    CHECK(benchLog(booster(), table, reading).error().text.find("which is what") != std::string::npos);
    CHECK_FALSE(addToReading(reading, table, "p"));
    CHECK_FALSE(addToReading(reading, table, "q=A1:vacuum"));
    CHECK_FALSE(addToReading(reading, table, "3=A1:vacuum"));
    REQUIRE(addToReading(reading, table, "p=A1:vakuum"));
    CHECK(benchLog(booster(), table, reading).error().text.find("\"A1:vacuum\"") != std::string::npos);
    REQUIRE(addToReading(reading, table, "p=A1:vacuum in volts"));
    CHECK(benchLog(booster(), table, reading).error().code == ErrorCode::WrongUnit);
}

TEST_CASE("a speed trace is read in its units", "[files][speed-trace]") {
    const auto kmh = parseSpeedTrace("Time [s],Gear,Speed [km/h]\n0,1,36\n1,2,72\n1,3,5\n2,3,\n3,3,18\n");
    REQUIRE(kmh);
    CHECK(kmh->times_s == std::vector<double>{0, 1, 3}); // neither the time that stays nor the empty cell
    CHECK_THAT(kmh->speeds_mps[1], WithinAbs(20, 1e-12));
    const auto mph = parseSpeedTrace("0;60\n1;59\n2;58\n");
    REQUIRE(mph);
    CHECK_THAT(mph->speeds_mps[0], WithinAbs(60 / 3.6, 1e-12)); // km/h where nothing is said
    const auto miles = parseSpeedTrace("time (min);speed (mph)\n0;60\n1;59\n2;58\n");
    CHECK_THAT(miles->speeds_mps[0], WithinAbs(26.8224, 1e-9)); // exact, by the mile of 1609.344 m
    CHECK(miles->times_s[1] == 60);
    CHECK(parseSpeedTrace("time,speed [knots]\n0,1\n1,2\n2,3\n").error().code == ErrorCode::WrongUnit);
    CHECK_FALSE(parseSpeedTrace("time,speed\n0,1\n1,2\n"));
}
