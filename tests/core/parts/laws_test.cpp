#include "tests/support/catch.h"
#include "tests/support/law_bench.h"

#include <cmath>

using namespace pumpwright;
using namespace pumpwright::test;

namespace {

/// Every kind with every single choice changed from its default, so that each branch of a law is met.
std::vector<std::pair<const PartKind*, Part>> variants() {
    std::vector<std::pair<const PartKind*, Part>> all;
    for (const PartKind* kind : partKinds()) {
        all.emplace_back(kind, newPart(*kind, "X1", {}));
        for (const ChoiceSpec& choice : kind->choices()) {
            for (std::size_t option = 1; option < choice.options.size(); ++option) {
                Part part = newPart(*kind, "X1", {});
                part.choices[std::string(choice.key)] = std::string(choice.options[option].id);
                all.emplace_back(kind, part);
            }
        }
    }
    return all;
}

std::string nameOf(const PartKind& kind, const Part& part) {
    std::string name(kind.id());
    for (const auto& [key, option] : part.choices) {
        name += ", " + key + " " + option;
    }
    return name;
}

/// A drive plan in which something happens to every part.
DrivePlan busyPlan() {
    DrivePlan plan;
    plan.presses = {{0, 10, 200, 0.2}};
    plan.charging = {{0, 10}};
    plan.switchMoves = {{0, {"p1"}, true}};
    return plan;
}

void checkSlopesAround(LawBench& bench, std::mt19937& random) {
    for (int point = 0; point < 4; ++point) {
        scatter(bench, random);
        checkSlopes(bench);
    }
}

/// At points ever further away from what a run visits.
void checkFinite(LawBench& bench, std::mt19937& random) {
    const auto size = static_cast<Unknown>(bench.size());
    for (const double distance : {1e-300, 1e-3, 1e2, 1e4, 1e7}) {
        scatter(bench, random);
        std::uniform_real_distribution<double> share(-distance, distance);
        for (Unknown u = 0; u < size; ++u) {
            bench.x(u) += share(random) * std::max(1.0, std::abs(bench.start(u)));
        }
        const PlainEquations equations = bench.equations();
        for (Unknown row = 0; row < size; ++row) {
            CHECK(std::isfinite(equations.f(row)));
            for (Unknown column = 0; column < size; ++column) {
                CHECK(std::isfinite(equations.slope(row, column)));
            }
        }
    }
}

/// The memory at the start and after each event, one after the other, whether due or not.
template <class Check>
void inEveryState(LawBench& bench, Check check) {
    check();
    for (std::size_t event = 0; event < bench.law().eventCount(); ++event) {
        bench.law().happen(event, bench.point(), bench.memory());
        INFO("after event " << event);
        check();
    }
}

Account accountOf(const LawBench& bench) {
    Account account;
    bench.law().addAccount(bench.point(), account);
    return account;
}

/// How fast an unknown that a law keeps grows; terminals and what follows from others are held.
double rateOf(const LawBench& bench, const PlainEquations& equations, const PlainMasses& masses, Unknown u) {
    const double mass = bench.sort(u) == BenchUnknown::Node ? 0 : masses.at(u, u);
    return mass == 0 ? 0 : equations.f(u) / mass;
}

/// What comes in over terminals and from outside against what goes out and by how much more is held, for
/// energy and gas. What is held is of second degree at most, so the central difference is exact.
void checkAccount(LawBench& bench) {
    constexpr double kSpan_s = 1e-4;
    const PlainEquations equations = bench.equations();
    const PlainMasses masses = bench.masses();
    const Account now = accountOf(bench);
    double over_W = 0;
    double gained_kgps = 0;
    std::vector<double> here;
    std::vector<double> rates;
    for (Unknown u = 0; u < static_cast<Unknown>(bench.size()); ++u) {
        here.push_back(bench.x(u));
        rates.push_back(rateOf(bench, equations, masses, u));
        over_W -= bench.sort(u) == BenchUnknown::Node ? bench.x(u) * equations.f(u) : 0;
        gained_kgps += bench.sort(u) == BenchUnknown::Mass ? equations.f(u) : 0;
    }
    const auto heldAfter_J = [&](double span_s) {
        for (std::size_t u = 0; u < rates.size(); ++u) {
            bench.x(static_cast<Unknown>(u)) = here[u] + span_s * rates[u];
        }
        return accountOf(bench).held_J;
    };
    const double held_W = (heldAfter_J(kSpan_s) - heldAfter_J(-kSpan_s)) / (2 * kSpan_s);
    const double size_W = std::abs(over_W) + now.energyIn_W + now.energyOut_W + std::abs(held_W);
    CAPTURE(over_W, now.energyIn_W, now.energyOut_W, held_W);
    CHECK(std::abs(over_W + now.energyIn_W - now.energyOut_W - held_W) <= 1e-8 * size_W + 1e-7);
    CHECK(gained_kgps == Approx(now.gasIn_kgps - now.gasOut_kgps).epsilon(1e-9).margin(1e-15));
}

} // namespace

TEST_CASE("every slope that a law states is the derivative of what it adds", "[parts][laws]") {
    std::mt19937 random(7);
    for (const auto& [kind, part] : variants()) {
        INFO(nameOf(*kind, part));
        LawBench bench(*kind, part, busyPlan());
        inEveryState(bench, [&] { checkSlopesAround(bench, random); });
    }
}

TEST_CASE("a wire's slopes are the derivatives of what it adds", "[parts][laws][wire]") {
    std::mt19937 random(8);
    Wire wire;
    wire.bundled = 4;
    LawBench bench(wire);
    checkSlopesAround(bench, random);
}

TEST_CASE("no law gives anything but finite numbers, however far off a trial point is", "[parts][laws]") {
    std::mt19937 random(9);
    for (const auto& [kind, part] : variants()) {
        INFO(nameOf(*kind, part));
        LawBench bench(*kind, part, busyPlan());
        inEveryState(bench, [&] { checkFinite(bench, random); });
    }
}

TEST_CASE("every value that a Nameplate accepts makes a law with finite numbers", "[parts][laws][kinds]") {
    std::mt19937 random(12);
    for (const auto& [kind, standard] : variants()) {
        for (const ParameterSpec& spec : kind->parameters()) {
            for (const double edge : {spec.low, spec.high}) {
                Part part = standard;
                part.values[std::string(spec.key)] = edge;
                INFO(nameOf(*kind, part) << ", " << spec.key << " " << edge);
                LawBench bench(*kind, part, busyPlan());
                inEveryState(bench, [&] { checkFinite(bench, random); });
            }
        }
    }
}

TEST_CASE("all values of a Nameplate at their lowest, or at their highest, make a law with finite numbers",
          "[parts][laws][kinds]") {
    std::mt19937 random(13);
    for (const auto& [kind, standard] : variants()) {
        for (const bool high : {false, true}) {
            Part part = standard;
            for (const ParameterSpec& spec : kind->parameters()) {
                part.values[std::string(spec.key)] = high ? spec.high : spec.low;
            }
            INFO(nameOf(*kind, part) << (high ? ", highest" : ", lowest"));
            LawBench bench(*kind, part, busyPlan());
            inEveryState(bench, [&] { checkFinite(bench, random); });
        }
    }
}

TEST_CASE("the currents of a part sum to zero over its terminals", "[parts][laws]") {
    std::mt19937 random(10);
    for (const auto& [kind, part] : variants()) {
        if (kind->features(part).ground) {
            continue; // its current goes into the body, which is no terminal
        }
        INFO(nameOf(*kind, part));
        LawBench bench(*kind, part, busyPlan());
        scatter(bench, random);
        double sum = 0;
        double size = 1e-12;
        for (const TerminalSpec& terminal : kind->terminals(part)) {
            sum += bench.currentInto(terminal.name);
            size = std::max(size, std::abs(bench.currentInto(terminal.name)));
        }
        CHECK(std::abs(sum) <= 1e-12 * size);
    }
}

TEST_CASE("no event of a law is due again right after it happened", "[parts][laws]") {
    std::mt19937 random(11);
    for (const auto& [kind, part] : variants()) {
        INFO(nameOf(*kind, part));
        LawBench bench(*kind, part, busyPlan());
        for (int point = 0; point < 50; ++point) {
            scatter(bench, random);
            bench.time_s += 0.003;
            for (const std::string& text : bench.settle()) {
                CHECK(text != "endless loop of events");
            }
        }
    }
}

TEST_CASE("every kind's standard values lie within its own limits, and it says what it is",
          "[parts][kinds]") {
    for (const PartKind* kind : partKinds()) {
        INFO(kind->id());
        CHECK_FALSE(kind->title().empty());
        CHECK_FALSE(kind->letter().empty());
        for (const ParameterSpec& spec : kind->parameters()) {
            INFO(spec.key);
            CHECK(spec.low < spec.high);
            CHECK(spec.low <= spec.standard);
            CHECK(spec.standard <= spec.high);
            CHECK_FALSE(spec.label.empty());
        }
        CHECK(findPartKind(kind->id()) == kind);
    }
}

TEST_CASE("features name only terminals that the part has", "[parts][kinds]") {
    for (const auto& [kind, part] : variants()) {
        INFO(nameOf(*kind, part));
        const auto terminals = kind->terminals(part);
        const auto known = [&](const std::string& name) {
            return std::any_of(terminals.begin(), terminals.end(),
                               [&](const TerminalSpec& terminal) { return terminal.name == name; });
        };
        const Features features = kind->features(part);
        for (const CurrentPath& path : features.paths) {
            CHECK((known(path.from) && known(path.to)));
        }
        for (const Contact& contact : features.contacts) {
            CHECK((known(contact.from) && known(contact.to)));
        }
        for (const Coil& coil : features.coils) {
            CHECK((known(coil.plus) && known(coil.minus)));
        }
        for (const Load& load : features.loads) {
            CHECK((known(load.from) && known(load.to)));
        }
        for (const std::string& optional : features.optionalTerminals) {
            CHECK(known(optional));
        }
    }
}

TEST_CASE("every contact has its two probes, and set points are parameters", "[parts][kinds]") {
    for (const auto& [kind, part] : variants()) {
        INFO(nameOf(*kind, part));
        LawBench bench(*kind, part);
        const auto probes = bench.law().probes();
        const auto known = [&](const std::string& name) {
            return std::any_of(probes.begin(), probes.end(),
                               [&](const Probe& probe) { return probe.name == name; });
        };
        for (const Contact& contact : kind->features(part).contacts) {
            const std::string tail = contact.name.empty() ? "" : " " + contact.name;
            CHECK(known(probe::kContact + tail));
            CHECK(known(probe::kContactCurrent + tail));
        }
        const auto parameters = kind->parameters();
        for (const std::string& key : kind->features(part).setPoints) {
            CHECK(std::any_of(parameters.begin(), parameters.end(),
                              [&](const ParameterSpec& spec) { return spec.key == key; }));
        }
    }
}

TEST_CASE("what a law takes in over its terminals and from outside goes out or is held",
          "[parts][laws][account]") {
    std::mt19937 random(14);
    for (const auto& [kind, part] : variants()) {
        INFO(nameOf(*kind, part));
        LawBench bench(*kind, part, busyPlan());
        inEveryState(bench, [&] {
            for (int point = 0; point < 4; ++point) {
                scatter(bench, random);
                checkAccount(bench);
            }
        });
    }
}

TEST_CASE("a wire's and a leaking hose's account hold too", "[parts][laws][account]") {
    std::mt19937 random(15);
    LawBench wire{Wire()};
    Hose leaking;
    leaking.leakHole_m = 5e-4;
    LawBench hose([&](LawContext& context) {
        const GasNode from = context.addGas("from", 1e-3, true);
        const GasNode to = context.addGas("to", 1e-3, true);
        return hoseLaw(leaking, from, to, context);
    });
    for (int point = 0; point < 20; ++point) {
        scatter(wire, random);
        checkAccount(wire);
        scatter(hose, random);
        const Account account = accountOf(hose);
        double gained_kgps = 0;
        for (Unknown u = 0; u < static_cast<Unknown>(hose.size()); ++u) {
            gained_kgps += hose.sort(u) == BenchUnknown::Mass ? hose.equations().f(u) : 0;
        }
        CHECK(account.gasIn_kgps > 0);
        CHECK(gained_kgps == Approx(account.gasIn_kgps - account.gasOut_kgps).epsilon(1e-12));
    }
}
