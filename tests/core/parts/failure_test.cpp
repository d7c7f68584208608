#include "core/parts/failure.h"
#include "core/parts/part_kind.h"
#include "tests/support/catch.h"

#include <algorithm>
#include <set>

using namespace pumpwright;

namespace {

/// Fails the test where an effect speaks of what the part does not have.
struct EffectCheck {
    const PartKind& kind;
    const Part& part;

    void operator()(const OpensTerminal& opens) const { CHECK(hasTerminal(opens.terminal)); }
    void operator()(const JoinsTerminals& joins) const {
        CHECK(hasTerminal(joins.from));
        CHECK(hasTerminal(joins.to));
    }
    void operator()(const SetsValue& sets) const {
        const auto specs = kind.parameters();
        const auto spec = std::ranges::find(specs, sets.key, &ParameterSpec::key);
        REQUIRE(spec != specs.end());
        CHECK(sets.value >= spec->low);
        CHECK(sets.value <= spec->high);
        CHECK(sets.value != kind.value(part, sets.key));
    }
    void operator()(const SetsChoice& sets) const {
        const auto specs = kind.choices();
        const auto spec = std::ranges::find(specs, sets.key, &ChoiceSpec::key);
        REQUIRE(spec != specs.end());
        CHECK(std::ranges::count(spec->options, sets.option,
                                 [](const auto& option) { return std::string(option.id); }) == 1);
    }

    bool hasTerminal(const std::string& name) const {
        return std::ranges::any_of(kind.terminals(part),
                                   [&](const TerminalSpec& spec) { return spec.name == name; });
    }
};

} // namespace

TEST_CASE("failures of every kind are named once and speak of what the part has", "[parts][failure]") {
    for (const PartKind* kind : partKinds()) {
        const Part part = newPart(*kind, "X1", {});
        std::set<std::string> ids;
        for (const Failure& failure : kind->failures(part)) {
            INFO(kind->id() << " " << failure.id);
            CHECK(ids.insert(failure.id).second);
            CHECK_FALSE(failure.title.empty());
            CHECK_FALSE(failure.effects.empty());
            for (const FailureEffect& effect : failure.effects) {
                std::visit(EffectCheck{*kind, part}, effect);
            }
        }
    }
}

TEST_CASE("a relay may weld, stay open and burn its coil", "[parts][failure]") {
    const PartKind& kind = *findPartKind("relay");
    const std::vector<Failure> failures = kind.failures(newPart(kind, "K1", {}));
    for (const char* id : {"contact-welded", "contact-open", "coil-open"}) {
        CHECK(std::ranges::count(failures, id, &Failure::id) == 1);
    }
}

TEST_CASE("a part's own tolerance goes before that of its kind", "[parts][tolerance]") {
    const PartKind& kind = *findPartKind("timer");
    Part timer = newPart(kind, "K2", {});
    CHECK(kind.tolerance(timer, "delay_s") == Tolerance{ToleranceSort::Uniform, 0.1});
    CHECK(kind.tolerance(timer, "ownCurrent_A").share == 0);
    timer.tolerances["delay_s"] = {ToleranceSort::Normal, 0.3};
    CHECK(kind.tolerance(timer, "delay_s") == Tolerance{ToleranceSort::Normal, 0.3});
}
