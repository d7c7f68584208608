#include "core/sheet/fault_search.h"

#include "core/parts/part_kind.h"
#include "core/sheet/cells.h"
#include "core/sheet/references.h"
#include "core/sheet/test_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace pumpwright {
namespace {

// Tolerances: common practice, no published source.
constexpr double kVoltage_V = 0.3;
constexpr double kReturn_V = 0.3;
constexpr double kLive_V = 1;
constexpr double kVacuum_Pa = 3000;
constexpr double kCurrentShare = 0.25;
constexpr std::size_t kAcrossLoad = 1000; ///< steps after all those of the feed
constexpr std::size_t kOnReturn = 2000;   ///< and after the load
constexpr std::size_t kLast = 1'000'000;  ///< ways after all ways of current

std::string pointName(const Circuit& circuit, const End& at) {
    return fmt::format("{}:{}", circuit.parts.at(at.part).reference, at.terminal);
}

bool isOf(const Breakdown& breakdown, const PartId& id) {
    return breakdown.subject == Subject::Part && breakdown.id == id.text;
}

/// What the breakdown does to its part; empty for wires and hoses.
std::vector<FailureEffect> effectsOf(const Circuit& circuit, const Breakdown& breakdown) {
    const auto part = circuit.parts.find(PartId{breakdown.id});
    if (breakdown.subject != Subject::Part || part == circuit.parts.end()) {
        return {};
    }
    for (Failure& failure : kindOf(part->second).failures(part->second)) {
        if (failure.id == breakdown.failure) {
            return std::move(failure.effects);
        }
    }
    return {};
}

/// A contact or the like that conducts always: it shows where there should be no voltage.
bool sticks(const std::vector<FailureEffect>& effects) {
    return std::ranges::any_of(
        effects, [](const FailureEffect& effect) { return std::holds_alternative<JoinsTerminals>(effect); });
}

bool opens(const std::vector<FailureEffect>& effects) {
    return std::ranges::any_of(
        effects, [](const FailureEffect& effect) { return std::holds_alternative<OpensTerminal>(effect); });
}

/// What a sound load does when it is fed straight from the battery.
std::string_view soundOf(const Part& part, const Load& load) {
    if (load.sort == LoadSort::Motor) {
        return "it runs";
    }
    if (load.sort == LoadSort::Coil) {
        return "it clicks";
    }
    return part.kind == "buzzer" ? "it sounds" : kindOf(part).letter() == "P" ? "it lights" : "it gets warm";
}

const ParameterSpec* changedParameter(const PartKind& kind, const std::vector<FailureEffect>& effects) {
    for (const FailureEffect& effect : effects) {
        if (const auto* sets = std::get_if<SetsValue>(&effect)) {
            const auto parameters = kind.parameters();
            const auto found = std::ranges::find(parameters, sets->key, &ParameterSpec::key);
            return found == parameters.end() ? nullptr : &*found;
        }
    }
    return nullptr;
}

} // namespace

FaultSearch::FaultSearch(const Survey& survey, const StandingTests& tests)
    : m_survey(survey), m_tests(tests) {
    std::vector<PartId> first = tests.workings.pumps;
    first.insert(first.end(), tests.workings.deciders.begin(), tests.workings.deciders.end());
    for (const WarningDevice& warning : tests.workings.warnings) {
        first.push_back(warning.part);
    }
    const auto add = [&](const LoadPath& path) {
        if (path.source && std::ranges::find(m_ways, &path) == m_ways.end()) {
            m_ways.push_back(&path);
        }
    };
    for (const PartId& id : first) {
        for (const std::size_t path : survey.pathsOf(id)) {
            add(survey.loadPaths()[path]);
        }
    }
    std::ranges::for_each(survey.loadPaths(), add);
}

End FaultSearch::minusOf(const LoadPath& path) const {
    return {*path.source, m_survey.features(*path.source).source->minus};
}

bool FaultSearch::leadsThrough(const LeadStep& step, const Breakdown& breakdown) const {
    if (step.wire && breakdown.subject == Subject::Wire) {
        return step.wire->text == breakdown.id;
    }
    return step.branch && isOf(breakdown, m_survey.branches()[*step.branch].part);
}

/// Its own terminals; where a lead has come off, the first point behind it.
std::optional<FaultSearch::Spot> FaultSearch::sourceSpot(const Breakdown& breakdown) const {
    const PartId id{breakdown.id};
    if (breakdown.subject != Subject::Part || !m_survey.features(id).source) {
        return std::nullopt;
    }
    const Source& source = *m_survey.features(id).source;
    const Spot own{{0, 0}, {id, source.plus}, {id, source.minus}};
    const auto fed = std::ranges::find_if(m_ways, [&](const LoadPath* way) { return way->source == id; });
    const bool off = opens(effectsOf(m_survey.circuit(), breakdown));
    return off && fed != m_ways.end() && !(*fed)->feed.empty()
               ? Spot{own.order, (*fed)->feed.front().to, own.against}
               : own;
}

std::optional<FaultSearch::Spot> FaultSearch::spotOnFeed(std::size_t way, const Breakdown& breakdown) const {
    const LoadPath& path = *m_ways[way];
    for (std::size_t i = 0; i < path.feed.size(); ++i) {
        if (leadsThrough(path.feed[i], breakdown)) {
            return Spot{{way, i + 1}, path.feed[i].to, minusOf(path)};
        }
    }
    return std::nullopt;
}

std::optional<FaultSearch::Spot> FaultSearch::spotOnReturn(std::size_t way,
                                                           const Breakdown& breakdown) const {
    const LoadPath& path = *m_ways[way];
    End at{path.part, path.load.to};
    for (std::size_t i = 0; i < path.back.size(); ++i) {
        const LeadStep& step = path.back[i];
        const bool throughGround = isOf(breakdown, at.part) && m_survey.features(at.part).ground;
        if (leadsThrough(step, breakdown) || throughGround) {
            return Spot{{way, kOnReturn + i}, at, minusOf(path), true};
        }
        at = step.to;
    }
    return std::nullopt;
}

std::optional<FaultSearch::Spot> FaultSearch::spotOnWay(std::size_t way, const Breakdown& breakdown) const {
    if (auto spot = spotOnFeed(way, breakdown)) {
        return spot;
    }
    const LoadPath& path = *m_ways[way];
    if (isOf(breakdown, path.part)) {
        return Spot{{way, kAcrossLoad}, {path.part, path.load.from}, {path.part, path.load.to}};
    }
    return spotOnReturn(way, breakdown);
}

std::optional<FaultSearch::Spot> FaultSearch::spotOf(const Breakdown& breakdown) const {
    if (auto spot = sourceSpot(breakdown)) {
        return spot;
    }
    for (std::size_t way = 0; way < m_ways.size(); ++way) {
        if (auto spot = spotOnWay(way, breakdown)) {
            return spot;
        }
    }
    return std::nullopt;
}

double FaultSearch::voltageAt(const Spot& spot, double at_s) const {
    const Channel* high = m_tests.runs.pumpDown.terminal(spot.at);
    const Channel* low = m_tests.runs.pumpDown.terminal(spot.against);
    return high == nullptr || low == nullptr ? 0 : high->at(at_s) - low->at(at_s);
}

FaultSearch::Moment FaultSearch::momentFor(const Spot& spot, bool stuck) const {
    const Moment empty{m_tests.runs.pedalHeld ? "All switches on, pedal held" : "All switches on, no vacuum",
                       TestRuns::kSwitchOn_s + 1};
    const Moment full{"All switches on, vacuum full, pump stopped", m_tests.runs.pumpDown.duration_s};
    const Moment off{"All switches off", TestRuns::kSwitchOn_s - 1};
    const std::array moments = stuck ? std::array{full, off} : std::array{empty, full};
    for (const Moment& moment : moments) {
        if (!spot.isReturn && (std::abs(voltageAt(spot, moment.at_s)) < kLive_V) == stuck) {
            return moment;
        }
    }
    return empty;
}

FaultTest FaultSearch::voltageTest(const Spot& spot, bool stuck) const {
    const Circuit& circuit = m_survey.circuit();
    const std::string where =
        fmt::format("volts at {} against {}", pointName(circuit, spot.at), pointName(circuit, spot.against));
    if (spot.isReturn) {
        return {spot.order, std::string(momentFor(spot, false).act), where,
                "below " + formatQuantity(kReturn_V, QuantityKind::Voltage)};
    }
    const Moment moment = momentFor(spot, stuck);
    return {spot.order, std::string(moment.act), where,
            expectedText(voltageAt(spot, moment.at_s), kVoltage_V, QuantityKind::Voltage)};
}

/// A load that is dead has its voltage: it is fed past the circuit.
std::optional<FaultTest> FaultSearch::loadTest(const Breakdown& breakdown) const {
    const auto spot = spotOf(breakdown);
    if (!spot || spot->order.second != kAcrossLoad) {
        return std::nullopt;
    }
    const Circuit& circuit = m_survey.circuit();
    const LoadPath& path = *m_ways[spot->order.first];
    const Part& part = circuit.parts.at(path.part);
    const End plus{*path.source, m_survey.features(*path.source).source->plus};
    return FaultTest{spot->order,
                     fmt::format("{} unplugged; leads from {} to {} and from {} to {}", part.reference,
                                 pointName(circuit, plus), pointName(circuit, spot->at),
                                 pointName(circuit, minusOf(path)), pointName(circuit, spot->against)),
                     "watch " + part.reference, std::string(soundOf(part, path.load))};
}

FaultTest FaultSearch::wireOnBodyTest(const Breakdown& breakdown) const {
    const Wire& wire = m_survey.circuit().wires.at(WireId{breakdown.id});
    const auto spot = spotOf(breakdown);
    return {spot ? spot->order : std::pair{kLast, std::size_t{0}},
            fmt::format("Battery off, both ends of {} off", wire.reference),
            fmt::format("ohms from {} to the body", wire.reference), "no continuity"};
}

/// Where assist is lost, the pump does not reach its vacuum; else the vacuum does not stay.
FaultTest FaultSearch::vacuumTest(const BreakdownOutcome& outcome) const {
    const std::string gauge =
        m_tests.workings.boosters.empty()
            ? "vacuum gauge"
            : "vacuum gauge at " + m_survey.part(m_tests.workings.boosters.front()).reference;
    if (outcome.lostAt_s) {
        const auto reached_Pa = m_tests.readings.stopVacuum_Pa;
        return {{kLast, 1},
                reached_Pa ? "When the pump stops" : "Pump has run for two minutes",
                gauge,
                expectedText(reached_Pa.value_or(m_tests.runs.reached_Pa), kVacuum_Pa,
                             QuantityKind::GaugeVacuum)};
    }
    return {{kLast, 2},
            "Vacuum full, all switches off, no press for five minutes",
            gauge,
            expectedText(m_tests.readings.afterRest_Pa, kVacuum_Pa, QuantityKind::GaugeVacuum)};
}

/// Where a value of a part has changed: what measures that value.
std::optional<FaultTest> FaultSearch::valueTest(const BreakdownOutcome& outcome) const {
    const Breakdown& breakdown = outcome.broken.front();
    const PartId id{breakdown.id};
    const Part& part = m_survey.part(id);
    const PartKind& kind = kindOf(part);
    const ParameterSpec* changed = changedParameter(kind, effectsOf(m_survey.circuit(), breakdown));
    if (changed == nullptr) {
        return std::nullopt;
    }
    const std::vector<std::string>& setPoints = m_survey.features(id).setPoints;
    if (std::ranges::find(setPoints, changed->key) != setPoints.end()) {
        return FaultTest{{kLast, 0},
                         "Let the vacuum fall, press by press",
                         fmt::format("{} when {} switches",
                                     changed->kind == QuantityKind::Time ? "clock" : "vacuum gauge",
                                     part.reference),
                         settingText(kind.value(part, changed->key), changed->kind)};
    }
    if (changed->kind == QuantityKind::Torque) {
        const double running_A = m_tests.readings.running_A.value_or(0);
        const auto spot = spotOf(breakdown);
        return FaultTest{
            {spot ? spot->order.first : kLast, kAcrossLoad + 1},
            "Pump switched on for ten seconds",
            "clamp meter on a wire of " + part.reference,
            expectedText(m_tests.readings.running_A, kCurrentShare * running_A, QuantityKind::Current)};
    }
    return kind.ports(part).empty() ? std::nullopt : std::optional(vacuumTest(outcome));
}

FaultTest FaultSearch::lookAt(const std::string& name) const {
    return {{kLast, 3}, "Battery off", "pull, wiggle and look at " + name, "nothing loose, burnt or open"};
}

FaultTest FaultSearch::testFor(const BreakdownOutcome& outcome) const {
    const Breakdown& breakdown = outcome.broken.front();
    if (breakdown.subject == Subject::Hose) {
        return vacuumTest(outcome);
    }
    if (breakdown.subject == Subject::Wire && breakdown.failure == kWireOnBody) {
        return wireOnBodyTest(breakdown);
    }
    if (breakdown.subject == Subject::Part) {
        if (auto test = valueTest(outcome)) {
            return *test;
        }
        if (auto test = loadTest(breakdown)) {
            return *test;
        }
    }
    if (const auto spot = spotOf(breakdown)) {
        return voltageTest(*spot, sticks(effectsOf(m_survey.circuit(), breakdown)));
    }
    return lookAt(breakdown.title.substr(0, breakdown.title.find(':')));
}

} // namespace pumpwright
