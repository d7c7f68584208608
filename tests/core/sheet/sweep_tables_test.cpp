#include "core/sheet/fit_tables.h"
#include "core/sheet/sweep_tables.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

using namespace pumpwright;

namespace {

Circuit booster() {
    return CircuitBuilder().part("booster", "A1").part("reservoir", "C1").build();
}

SweepAxis axis(const char* name, double from, double to, int points) {
    return {findAdjustable(booster(), name).value(), from, to, points};
}

/// Pump starts that fall from point to point.
SweepStudy studyOver(std::vector<SweepAxis> axes) {
    SweepStudy study;
    study.axes = std::move(axes);
    study.total = 1;
    for (const SweepAxis& one : study.axes) {
        study.total *= static_cast<std::size_t>(one.points);
    }
    study.resolution = 0.01e-3;
    for (std::size_t i = 0; i < study.total; ++i) {
        SweepPoint point{{study.axes.front().at(static_cast<int>(i) % study.axes.front().points)}, {}};
        point.outcome.numbers.pumpStarts = static_cast<int>(study.total - i);
        study.points.push_back(point);
    }
    return study;
}

const Measure& starts() {
    return *findMeasure("pump-starts");
}

} // namespace

TEST_CASE("a curve has a row for each point and says what is good", "[sheet][sweep-tables]") {
    SweepStudy study = studyOver({axis("C1.volume_m3", 1e-3, 3e-3, 3)});
    study.turns = 1;
    study.thresholds = {{std::nullopt, 1.49e-3, 1.5e-3}};
    const std::vector<SheetTable> tables = sweepTables(study, starts(), 2);
    REQUIRE(tables.size() == 2);
    CHECK(tables[0].rows[0][1] == "Good from 1.5 L up, not yet at 1.49 L.");
    CHECK(tables[1].rows ==
          std::vector<std::vector<std::string>>{{"1 L", "3"}, {"2 L", "2, good"}, {"3 L", "1, good"}});
    CHECK(tables[1].title == "Pump starts; good is 2 or less");
    CHECK(sweepTables(study, starts(), std::nullopt).size() == 1);
}

TEST_CASE("a map has the first value downwards and the second to the right", "[sheet][sweep-tables]") {
    const SweepStudy study = studyOver({axis("C1.volume_m3", 1e-3, 2e-3, 2), axis("A1.boostRatio", 4, 6, 3)});
    const SheetTable map = sweepTables(study, starts(), std::nullopt)[0];
    CHECK(map.columns.size() == 4);
    CHECK(map.rows == std::vector<std::vector<std::string>>{{"1 L", "6", "4", "2"}, {"2 L", "5", "3", "1"}});
}

TEST_CASE("a sweep that was ended early does not pass for a whole one", "[sheet][sweep-tables]") {
    SweepStudy study = studyOver({axis("C1.volume_m3", 1e-3, 3e-3, 3)});
    CHECK(sweepTables(study, starts(), 2)[0].rows.back()[1].find("nowhere") != std::string::npos);
    study.points.pop_back();
    CHECK(sweepTables(study, starts(), 2)[0].rows.back()[1].find("ended before") != std::string::npos);
}

TEST_CASE("a drive that could not be finished is no result", "[sheet][sweep-tables]") {
    SweepStudy study = studyOver({axis("C1.volume_m3", 1e-3, 3e-3, 3)});
    study.points[2].outcome.status = DriveStatus::Stopped;
    CHECK(sweepTables(study, starts(), 5)[1].rows[2][1] == "the drive stopped");
}

TEST_CASE("a fit's table holds errors, and warnings are plain words", "[sheet][fit-tables]") {
    FitResult result;
    const Circuit circuit = booster();
    result.values = {{findAdjustable(circuit, "A1.leakHole_m").value(), 4e-5, 1e-4, 2e-6, false},
                     {findAdjustable(circuit, "A1.vacuumVolume_m3").value(), 3e-3, 4e-3, 1e-4, false},
                     {findAdjustable(circuit, "A1.boostRatio").value(), 5, 5, std::nullopt, false},
                     {findAdjustable(circuit, "C1.volume_m3").value(), 1e-3, 2e-2, std::nullopt, true}};
    result.tangles = {{0, 1, 0.999}};
    const SheetTable values = fitTables(result)[0];
    CHECK(values.rows[0][4] == "2.0 %");
    CHECK(values.rows[2][3] == "–");
    const std::vector<Text> warnings = fitWarnings(result);
    REQUIRE(warnings.size() == 3);
    CHECK(warnings[0].english().find(
              "cannot tell A1 Equivalent hole of all leaks and A1 Vacuum chamber at rest apart") !=
          std::string::npos);
    CHECK(warnings[1].english().find("says nothing about A1 Boost ratio") != std::string::npos);
    CHECK(warnings[2].english().find("at the limit") != std::string::npos);
    result.traces = {{"A1:vacuum", QuantityKind::GaugeVacuum, 300, 10e3, 999, 10e3}};
    CHECK(fitWarnings(result).size() == 3);
    result.traces[0].after = 1001;
    CHECK(fitWarnings(result).front().english().find("does not meet A1:vacuum") != std::string::npos);
}
