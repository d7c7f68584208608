#include "core/sheet/commissioning.h"

#include "core/checks/drive_reading.h"
#include "core/parts/part_kind.h"
#include "core/sheet/references.h"
#include "core/sheet/test_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

// Tolerances: common practice, no published source.
constexpr double kVoltage_V = 0.3;
constexpr double kDrop_V = 0.2;
constexpr double kCurrentShare = 0.25;
constexpr double kTimeShare = 0.25;
constexpr double kResistanceShare = 0.1;
constexpr double kVacuum_Pa = 3000;

/// A terminal to put the voltmeter on, and what lies between it and the source.
struct MeasuringPoint {
    End at;
    std::vector<std::string> before;
};

class Commissioner {
public:
    Commissioner(const Survey& survey, const StandingTests& tests)
        : m_circuit(survey.circuit()), m_survey(survey), m_workings(tests.workings), m_runs(tests.runs),
          m_readings(tests.readings) {}

    Commissioning commissioning() &&;

private:
    void addResistances();
    void addVoltages(std::string_view act, double at_s);
    void addCurrents();
    void addGroundDrop();
    void addTimes();
    void addWarnings();
    void addReserve();
    void addLowSpeed();
    std::vector<std::string> stopConditions() const;

    std::vector<MeasuringPoint> measuringPoints() const;
    void addPointsOn(std::vector<MeasuringPoint>& points, const LoadPath& path) const;
    std::string pointName(const End& at) const {
        return fmt::format("{}:{}", m_circuit.parts.at(at.part).reference, at.terminal);
    }
    std::string name(const PartId& id) const { return partName(m_circuit, id); }
    const PartId& pump() const { return m_workings.pumps.front(); }
    std::string references(const std::vector<PartId>& ids) const;
    std::string switchesOn() const;

    const Circuit& m_circuit;
    const Survey& m_survey;
    const Workings& m_workings;
    const TestRuns& m_runs;
    const TestReadings& m_readings;
    TestTables m_tables;
};

std::string Commissioner::references(const std::vector<PartId>& ids) const {
    std::vector<std::string> texts;
    for (const PartId& id : ids) {
        texts.push_back(m_circuit.parts.at(id).reference);
    }
    return joinedReferences(std::move(texts));
}

std::string Commissioner::switchesOn() const {
    return m_runs.pedalHeld ? "All switches on, hold the pedal" : "All switches on";
}

/// The ohmmeter also sees a resistor across the coil.
double measuredCoil_ohm(const Coil& coil, const Part& part) {
    constexpr std::string_view kKey = "suppressionResistance_ohm";
    const auto parameters = kindOf(part).parameters();
    if (coil.suppression != Suppression::Resistor ||
        std::ranges::find(parameters, kKey, &ParameterSpec::key) == parameters.end()) {
        return coil.resistance_ohm;
    }
    const double across_ohm = kindOf(part).value(part, kKey);
    return coil.resistance_ohm * across_ohm / (coil.resistance_ohm + across_ohm);
}

void Commissioner::addResistances() {
    m_tables.startStage("Stage 1: battery disconnected");
    for (const auto& [id, part] : m_circuit.parts) {
        for (const Coil& coil : m_survey.features(id).coils) {
            const double ohm = measuredCoil_ohm(coil, part);
            m_tables.add({"Pull " + name(id) + " out of its socket",
                          fmt::format("ohms from {}:{} (red lead) to {}:{}, 20 °C", part.reference, coil.plus,
                                      part.reference, coil.minus),
                          expectedText(ohm, kResistanceShare * ohm, QuantityKind::Resistance),
                          fmt::format("{}: another coil voltage, a diode the other way round, an open coil",
                                      part.reference)});
        }
        if (m_survey.features(id).source) {
            const Source& source = *m_survey.features(id).source;
            m_tables.add({"Plus lead off, fuses in, switches off",
                          fmt::format("ohms from the plus lead to {}:{}", part.reference, source.minus),
                          "above 10 Ω", "a short: see the findings, then pull the fuses one by one"});
        }
    }
}

void Commissioner::addPointsOn(std::vector<MeasuringPoint>& points, const LoadPath& path) const {
    std::vector<std::string> before;
    for (const LeadStep& step : path.feed) {
        if (step.wire) {
            before.push_back(m_circuit.wires.at(*step.wire).reference);
            if (std::ranges::find(points, step.to, &MeasuringPoint::at) == points.end()) {
                points.push_back({step.to, before});
            }
        } else if (step.branch) {
            before.push_back(m_circuit.parts.at(step.to.part).reference);
        }
    }
}

/// The ends of the wires on the ways to the pump and to what switches it, from the source on.
std::vector<MeasuringPoint> Commissioner::measuringPoints() const {
    constexpr std::size_t kMost = 16;
    std::vector<MeasuringPoint> points;
    std::vector<PartId> fed{pump()};
    fed.insert(fed.end(), m_workings.deciders.begin(), m_workings.deciders.end());
    for (const PartId& part : fed) {
        const LoadPath* path = feedOf(m_survey, part);
        if (path == nullptr) {
            continue;
        }
        const Source& source = *m_survey.features(*path->source).source;
        if (points.empty()) {
            points.push_back({{*path->source, source.plus}, {}});
        }
        addPointsOn(points, *path);
    }
    points.resize(std::min(points.size(), kMost));
    return points;
}

void Commissioner::addVoltages(std::string_view act, double at_s) {
    const LoadPath* path = feedOf(m_survey, pump());
    if (path == nullptr) {
        return;
    }
    const End minus{*path->source, m_survey.features(*path->source).source->minus};
    const Channel* reference = m_runs.pumpDown.terminal(minus);
    for (const MeasuringPoint& point : measuringPoints()) {
        const Channel* channel = m_runs.pumpDown.terminal(point.at);
        if (channel == nullptr || reference == nullptr) {
            continue;
        }
        const double voltage_V = channel->at(at_s) - reference->at(at_s);
        const bool dead = voltage_V < kVoltage_V;
        const std::string open = point.before.empty()
                                     ? "battery flat or its pole loose"
                                     : fmt::format("open on the way: {}", fmt::join(point.before, ", "));
        m_tables.add(
            {std::string(act), fmt::format("volts at {} against {}", pointName(point.at), pointName(minus)),
             expectedText(voltage_V, kVoltage_V, QuantityKind::Voltage),
             dead
                 ? "a contact that sticks, or wires swapped at " + m_circuit.parts.at(point.at.part).reference
                 : open});
    }
}

void Commissioner::addCurrents() {
    const std::string clamp = "clamp meter on a wire of " + m_circuit.parts.at(pump()).reference;
    const double start_A = m_readings.start_A.value_or(0);
    const double running_A = m_readings.running_A.value_or(0);
    m_tables.add({switchesOn(), clamp + ", peak hold",
                  expectedText(m_readings.start_A, kCurrentShare * start_A, QuantityKind::Current),
                  "higher: pump stiff or blocked; lower: thin wire, poor crimp, weak battery"});
    m_tables.add({"Just before it stops", clamp,
                  expectedText(m_readings.running_A, kCurrentShare * running_A, QuantityKind::Current),
                  "higher: pump worn or stiff; lower: hose off, or voltage lost on the way"});
}

void Commissioner::addGroundDrop() {
    const LoadPath* path = feedOf(m_survey, pump());
    if (path == nullptr || !m_readings.start_A) {
        return;
    }
    const End minus{*path->source, m_survey.features(*path->source).source->minus};
    const End lead{pump(), path->load.to};
    const Channel* high = m_runs.pumpDown.terminal(lead);
    const Channel* low = m_runs.pumpDown.terminal(minus);
    if (high != nullptr && low != nullptr) {
        const double drop_V = high->at(m_readings.loaded_s) - low->at(m_readings.loaded_s);
        m_tables.add(
            {"Pump running", fmt::format("volts from {} to {}", pointName(lead), pointName(minus)),
             "at most " + formatQuantity(std::ceil((drop_V + kDrop_V) * 10) / 10, QuantityKind::Voltage),
             "paint or rust under a ground ring, a loose nut"});
    }
}

void Commissioner::addTimes() {
    const std::string sensor =
        m_workings.sensors.empty() ? "" : m_circuit.parts.at(m_workings.sensors.front()).reference;
    const double pumpDown_s = m_readings.pumpDown_s.value_or(0);
    m_tables.add(
        {"From no vacuum: " + switchesOn(),
         sensor.empty() ? "seconds until the vacuum is nearly full" : "seconds until " + sensor + " opens",
         expectedText(m_readings.pumpDown_s, kTimeShare * pumpDown_s, QuantityKind::Time),
         "longer: hose or booster leaks, check valve the wrong way round, low voltage"});
    if (m_readings.stopVacuum_Pa) {
        m_tables.add({"When the pump stops", "vacuum gauge at the booster",
                      expectedText(m_readings.stopVacuum_Pa, kVacuum_Pa, QuantityKind::GaugeVacuum),
                      sensor.empty() ? "what stops the pump" : sensor + ": adjust its set point"});
    }
    if (m_readings.runOn_s) {
        const double runOn_s = *m_readings.runOn_s;
        m_tables.add({"After " + sensor + " has opened", "seconds until the pump stops",
                      expectedText(runOn_s, std::max(0.5, kTimeShare * runOn_s), QuantityKind::Time),
                      references(m_workings.timers) + ": set time or function"});
    }
}

void Commissioner::addWarnings() {
    for (const WarningDevice& warning : m_workings.warnings) {
        const Channel* lit = m_runs.pumpDown.part(warning.part, probe::kEnergised);
        const Channel* vacuum = vacuumThatCounts(m_runs.pumpDown, m_circuit, m_workings);
        if (lit == nullptr || vacuum == nullptr) {
            continue;
        }
        const double soon_s = TestRuns::kSwitchOn_s + 0.5;
        m_tables.add({"No vacuum: switches on", name(warning.part),
                      lit->at(soon_s) > 0.5 ? "on at once" : "off, as in the simulation",
                      "lamp or buzzer, its fuse, " + references(warning.sensors)});
        const auto off = fallings(*lit);
        const auto goes = std::ranges::find_if(off, [&](double at_s) { return at_s > soon_s; });
        const auto level = goes == off.end() ? std::nullopt : std::optional<double>(vacuum->at(*goes));
        m_tables.add({"Pump running", "vacuum when " + name(warning.part) + " goes off",
                      expectedText(level, kVacuum_Pa, QuantityKind::GaugeVacuum),
                      references(warning.sensors) + ": adjust its set point"});
    }
}

void Commissioner::addReserve() {
    m_tables.startStage("Stage 4: tightness and reserve, vehicle standing");
    m_tables.add({"Vacuum full, all switches off, no foot on the pedal", "vacuum after five minutes",
                  expectedText(m_readings.afterRest_Pa, kVacuum_Pa, QuantityKind::GaugeVacuum),
                  "a leak: hoses, check valve, booster. Clamp the hoses one by one to find it"});
    if (!m_workings.boosters.empty()) {
        m_tables.add({"Vacuum full, switches on, full presses four seconds apart",
                      "the press at which the pump starts",
                      m_readings.pressesToStart ? fmt::format("number {}, ± 1", *m_readings.pressesToStart)
                                                : fmt::format("none of the first {}", TestRuns::kMostPresses),
                      "earlier: booster leaks; later or never: " + (m_workings.sensors.empty()
                                                                        ? std::string("what starts the pump")
                                                                        : references(m_workings.sensors))});
        m_tables.add({"Vacuum full, pump unplugged, the same presses", "presses with full assist",
                      m_readings.assistedPresses >= TestRuns::kMostPresses
                          ? fmt::format("{} or more", TestRuns::kMostPresses)
                          : fmt::format("{} ± 1", m_readings.assistedPresses),
                      "check valve leaks or sits on the wrong side"});
    }
}

void Commissioner::addLowSpeed() {
    m_tables.startStage("Stage 5: low speed, private level ground, only when stages 1 to 4 are right");
    m_tables.add({"Walking pace, pump plugged in, press lightly", "the vehicle stops, straight, pedal firm",
                  "it does", "air in the lines, booster rod, mounting of the booster"});
    if (m_readings.deceleration_mps2) {
        const double slowing = *m_readings.deceleration_mps2;
        m_tables.add({fmt::format("10 km/h, press with about {}",
                                  formatQuantity(TestRuns::kPressForce_N, QuantityKind::Force)),
                      "deceleration (telephone or paper scale)",
                      expectedText(slowing, 0.25 * slowing, QuantityKind::Acceleration),
                      "little assist: vacuum at the booster; or the brakes themselves"});
    }
    m_tables.add({"10 km/h, pump unplugged, press until the pedal gets hard", "presses with full assist",
                  fmt::format("as in stage 4: {}", m_readings.assistedPresses),
                  "as in stage 4; the vehicle must still stop, with more force"});
    m_tables.add({"20 km/h, ten stops, one a minute",
                  m_workings.warnings.empty() ? "vacuum gauge" : "warning, and wires at fuse and relay",
                  "warning off; nothing too hot to touch (60 °C)", "crimps, fuse holder, wire size"});
}

std::vector<std::string> Commissioner::stopConditions() const {
    std::vector<std::string> texts{
        "The pedal gets hard or sinks, or the vehicle pulls to one side.",
        "Smoke, smell, a fuse that opens, or a wire or part too hot to touch.",
        "The relay buzzes or chatters.",
        "A reading outside its limits that you can't explain.",
    };
    if (m_readings.pumpDown_s) {
        texts.push_back(
            fmt::format("The pump runs longer than {} without a press.",
                        formatQuantity(std::ceil(2 * *m_readings.pumpDown_s + m_readings.runOn_s.value_or(0)),
                                       QuantityKind::Time)));
    }
    if (!m_workings.warnings.empty()) {
        texts.push_back("The warning stays on, or comes on, while driving.");
    }
    return texts;
}

Commissioning Commissioner::commissioning() && {
    addResistances();
    if (m_workings.pumps.empty()) {
        return {std::move(m_tables).finished(), stopConditions()};
    }
    m_tables.startStage("Stage 2: battery connected, vehicle standing, wheels chocked, all switches off");
    addVoltages("Switches off", TestRuns::kSwitchOn_s - 1);
    m_tables.startStage("Stage 3: vehicle standing, pump running");
    addCurrents();
    addVoltages(switchesOn() + ", pump running", m_readings.loaded_s);
    addGroundDrop();
    addTimes();
    addWarnings();
    addReserve();
    addLowSpeed();
    const auto conditions = stopConditions();
    return {std::move(m_tables).finished(), conditions};
}

} // namespace

Commissioning commissioningOf(const Survey& survey, const StandingTests& tests) {
    return Commissioner(survey, tests).commissioning();
}

} // namespace pumpwright
