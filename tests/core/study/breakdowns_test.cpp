// What each failure must lead to: common practice, no published source.

#include "core/study/breakdowns.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

#include <algorithm>
#include <set>

using namespace pumpwright;

namespace {

/// The van, a vacuum switch that starts the pump, and on request a lamp that tells of low vacuum.
Circuit van(bool withLamp) {
    CircuitBuilder builder = vanVacuumSide({{"setPoint_Pa", 55000}, {"differential_Pa", 5000}});
    DrivePlan plan = standingPlan(50);
    plan.presses = {{25, 1.5, 100, 0.25}, {40, 1.5, 100, 0.25}};
    addPumpFeed(builder, {{"suppression", "resistor"}})
        .wire("G1.30", "B1.1", 0.75e-6)
        .wire("B1.2", "K1.86", 0.75e-6)
        .plan(plan);
    if (withLamp) {
        builder.part("vacuum-switch", "B2", {{"setPoint_Pa", 30000}, {"differential_Pa", 6000}})
            .part("lamp", "P1", {{"ratedPower_W", 1.2}})
            .hose("X9.c", "B2.vacuum", 0.004, 0.3)
            .wire("G1.30", "B2.1", 0.75e-6)
            .wire("B2.2", "P1.1", 0.75e-6)
            .wire("P1.2", "X3.31", 0.75e-6);
    }
    return builder.build();
}

const BreakdownStudy& study(bool withLamp) {
    static const BreakdownStudy silent = runBreakdowns(van(false));
    static const BreakdownStudy warned = runBreakdowns(van(true));
    return withLamp ? warned : silent;
}

const BreakdownOutcome& outcome(const BreakdownStudy& in, const std::string& id, const std::string& failure) {
    const auto found = std::ranges::find_if(in.outcomes, [&](const BreakdownOutcome& one) {
        return one.broken.front().id == id && one.broken.front().failure == failure;
    });
    INFO(id << " " << failure);
    REQUIRE(found != in.outcomes.end());
    return *found;
}

} // namespace

TEST_CASE("every part, wire and hose of a car may fail, each in its own ways", "[study][breakdowns]") {
    const std::vector<Breakdown> all = breakdownsOf(van(true));
    std::set<std::string> names;
    std::set<std::string> subjects;
    for (const Breakdown& breakdown : all) {
        names.insert(breakdown.id + " " + breakdown.failure);
        subjects.insert(breakdown.id);
        CHECK_FALSE(breakdown.title.empty());
    }
    CHECK(names.size() == all.size());
    for (const char* id : {"A1", "B1", "F1", "G1", "K1", "M1", "P1", "R9", "X1", "w1", "h1"}) {
        CHECK(subjects.contains(id));
    }
}

TEST_CASE("a failure takes itself back with its edit's inverse", "[study][breakdowns]") {
    const Circuit circuit = van(true);
    for (const Breakdown& breakdown : breakdownsOf(circuit)) {
        INFO(breakdown.title);
        Circuit broken = circuit;
        const Edit inverse = applyEdit(broken, breakdownEdit(circuit, breakdown));
        CHECK_FALSE(broken == circuit);
        applyEdit(broken, inverse);
        CHECK(broken == circuit);
    }
}

TEST_CASE("a relay that stays open takes the assist, silently where no lamp warns", "[study][breakdowns]") {
    CHECK(outcome(study(false), "K1", "contact-open").consequence == Consequence::SilentLoss);
    const BreakdownOutcome& warned = outcome(study(true), "K1", "contact-open");
    CHECK(warned.consequence == Consequence::LossAfterWarning);
    REQUIRE(warned.warnedAt_s.has_value());
    CHECK(*warned.warnedAt_s < 25);
    CHECK(warned.stopped == std::vector<PartId>{PartId{"M1"}});
}

TEST_CASE("a dead pump, a lost ground and a broken feed take the assist", "[study][breakdowns]") {
    for (const auto& [id, failure] : std::vector<std::pair<std::string, std::string>>{
             {"M1", "motor-dead"}, {"X2", "ground-lost"}, {"F1", "fuse-blown"}, {"w3", "wire-broken"}}) {
        CHECK(outcome(study(false), id, failure).consequence == Consequence::SilentLoss);
    }
}

TEST_CASE("a welded relay makes the pump run on, which is heard", "[study][breakdowns]") {
    const BreakdownOutcome& welded = outcome(study(false), "K1", "contact-welded");
    CHECK(welded.consequence == Consequence::Noticed);
    CHECK(welded.runsOn == std::vector<PartId>{PartId{"M1"}});
    CHECK(welded.lacking == 0);
}

TEST_CASE("a burnt-out lamp is noticed by nobody", "[study][breakdowns]") {
    CHECK(outcome(study(true), "P1", "lamp-burnt-out").consequence == Consequence::Unnoticed);
}

TEST_CASE("the fuse saves the wire that touches the body behind it", "[study][breakdowns]") {
    const BreakdownOutcome& chafed = outcome(study(false), "w3", "wire-on-body"); // from fuse to relay
    CHECK(chafed.openedFuses == std::vector<PartId>{PartId{"F1"}});
    CHECK(chafed.fuseSavedWires());
}

TEST_CASE("silent losses of assist come first", "[study][breakdowns]") {
    const std::vector<BreakdownOutcome>& outcomes = study(true).outcomes;
    CHECK(std::ranges::is_sorted(outcomes, {}, &BreakdownOutcome::consequence));
    CHECK(study(true).isComplete());
    CHECK(study(false).outcomes.front().consequence == Consequence::SilentLoss);
}

TEST_CASE("one thread and two give the same breakdowns", "[study][breakdowns]") {
    BreakdownOptions options;
    options.threads = 1;
    const BreakdownStudy one = runBreakdowns(van(false), options);
    REQUIRE(one.outcomes.size() == study(false).outcomes.size());
    for (std::size_t i = 0; i < one.outcomes.size(); ++i) {
        CHECK(one.outcomes[i].broken.front().title == study(false).outcomes[i].broken.front().title);
        CHECK(one.outcomes[i].noticed == study(false).outcomes[i].noticed);
    }
}

TEST_CASE("a cancelled study keeps what it has", "[study][breakdowns]") {
    std::atomic<bool> cancel = false;
    BreakdownOptions options;
    options.cancel = &cancel;
    options.partial = [&](const BreakdownOutcome&) { cancel = true; };
    const BreakdownStudy part = runBreakdowns(van(false), options);
    CHECK_FALSE(part.isComplete());
    CHECK_FALSE(part.outcomes.empty());
}
