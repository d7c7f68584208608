#include "core/checks/load_path.h"
#include "core/checks/survey.h"
#include "tests/core/checks/run_rule.h"

#include <tuple>

using namespace pumpwright;

namespace {

/// A circuit with its nets and survey, which refer to it.
struct Surveyed {
    Circuit circuit;
    Nets nets = findNets(circuit);
    Survey survey{CheckInputs{circuit, nets, nullptr}};

    const LoadPath& pathOf(const char* part) const {
        const auto& paths = survey.loadPaths();
        const auto found = std::find_if(paths.begin(), paths.end(),
                                        [&](const LoadPath& path) { return path.part == PartId{part}; });
        REQUIRE(found != paths.end());
        return *found;
    }

    double running_A(const char* wire) const {
        const auto& wires = survey.expectedCurrents().wires;
        const auto found = wires.find(WireId{wire});
        return found == wires.end() ? 0 : found->second.running_A;
    }
};

std::vector<std::string> wiresOf(const std::vector<LeadStep>& way) {
    std::vector<std::string> wires;
    for (const LeadStep& step : way) {
        if (step.wire) {
            wires.push_back(step.wire->text);
        }
    }
    return wires;
}

} // namespace

TEST_CASE("a load's way leads over fuse and contact and back over the body", "[checks][load-path]") {
    const Surveyed lamp{switchedLamp().build()};
    const LoadPath& path = lamp.pathOf("P1");
    REQUIRE(path.source.has_value());
    CHECK(wiresOf(path.feed) == std::vector<std::string>{"w1", "w2", "w3"});
    CHECK(wiresOf(path.back) == std::vector<std::string>{"w4", "w5"});
    CHECK(path.load.from == "1");
}

TEST_CASE("a lamp is turned so that its feed comes first", "[checks][load-path]") {
    const Surveyed lamp{CircuitBuilder()
                            .part("supply", "G1")
                            .part("lamp", "P1")
                            .wire("G1.30", "P1.2")
                            .wire("P1.1", "G1.31")
                            .build()};
    CHECK(lamp.pathOf("P1").load.from == "2");
}

TEST_CASE("a buzzer that conducts one way only is not turned", "[checks][load-path]") {
    const Surveyed buzzer{CircuitBuilder()
                              .part("supply", "G1")
                              .part("buzzer", "P1")
                              .wire("G1.30", "P1.-")
                              .wire("P1.+", "G1.31")
                              .build()};
    CHECK_FALSE(buzzer.pathOf("P1").source.has_value());
}

TEST_CASE("what loads need adds up in the wires that they share", "[checks][load-path]") {
    CircuitBuilder builder = switchedLamp({{"ratedPower_W", 60}});
    const Surveyed two{builder.part("lamp", "P2", {{"ratedPower_W", 24}})
                           .part("ground", "X3")
                           .wire("S1.2", "P2.1")
                           .wire("P2.2", "X3.31")
                           .build()};
    CHECK(two.running_A("w1") == Approx(7));
    CHECK(two.running_A("w3") == Approx(5));
    CHECK(two.running_A("w6") == Approx(2));
    CHECK(two.running_A("w5") == Approx(7));
}

TEST_CASE("the inrush counts the load with the highest step while the others run", "[checks][load-path]") {
    CircuitBuilder builder = CircuitBuilder().part("supply", "G1").part("fuse", "F1").wire("G1.30", "F1.1");
    for (const auto& [name, running_A, inrush_A] :
         {std::tuple{"M1", 5.0, 12.0}, std::tuple{"M2", 4.0, 20.0}}) {
        builder.part("pump", name, {{"runningCurrent_A", running_A}, {"inrushCurrent_A", inrush_A}})
            .wire("F1.2", std::string(name) + ".+")
            .wire(std::string(name) + ".-", "G1.31");
    }
    const Surveyed pumps{builder.build()};
    const ExpectedCurrent& fuse = pumps.survey.expectedCurrents().wires.at(WireId{"w1"});
    CHECK(fuse.running_A == Approx(9));
    CHECK(fuse.inrush_A == Approx(25)); // 20 A of M2 and 5 A of M1
    CHECK(fuse.inductive);
}

TEST_CASE("a coil is a load of supply voltage over resistance", "[checks][load-path]") {
    const Surveyed van{soundVan().build()};
    const auto coil = std::find_if(van.survey.loadPaths().begin(), van.survey.loadPaths().end(),
                                   [](const LoadPath& path) { return path.load.sort == LoadSort::Coil; });
    REQUIRE(coil != van.survey.loadPaths().end());
    CHECK(coil->load.running_A == Approx(van.survey.supplyVoltage_V() / 90));
}
