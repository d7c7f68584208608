#include "core/sheet/test_readings.h"

#include "core/checks/drive_reading.h"
#include "core/parts/part_kind.h"

#include <algorithm>

namespace pumpwright {
namespace {

constexpr double kAssistedShare = 0.9;

std::optional<double> firstAfter(const std::vector<double>& times_s, double after_s) {
    const auto found = std::ranges::find_if(times_s, [&](double time_s) { return time_s > after_s; });
    return found == times_s.end() ? std::nullopt : std::optional<double>(*found);
}

/// When the first sensor's contact opens; the vacuum is then reached.
std::optional<double> sensorOpens_s(const Workings& workings, const Recording& recording) {
    if (workings.sensors.empty()) {
        return std::nullopt;
    }
    const Channel* contact = recording.part(workings.sensors.front(), probe::kContact);
    return contact == nullptr ? std::nullopt : firstAfter(fallings(*contact), TestRuns::kSwitchOn_s);
}

/// When nine tenths of what it comes to are reached.
std::optional<double> nearlyReached_s(const Channel& vacuum, double end_s) {
    const double level = 0.9 * vacuum.at(end_s);
    for (std::size_t i = 0; i < vacuum.times_s.size(); ++i) {
        if (level > 0 && static_cast<double>(vacuum.values[i]) >= level) {
            return vacuum.times_s[i];
        }
    }
    return std::nullopt;
}

void readPumpDown(TestReadings& readings, const Circuit& circuit, const Workings& workings,
                  const TestRuns& runs) {
    const PartId& pump = workings.pumps.front();
    const Recording& recording = runs.pumpDown;
    const Channel* current = recording.part(pump, probe::kCurrent);
    const Channel* vacuum = vacuumThatCounts(recording, circuit, workings);
    if (current == nullptr || vacuum == nullptr) {
        return;
    }
    const auto spans = spansAbove(*current, runningThreshold_A(circuit.parts.at(pump)), 0.5);
    if (spans.empty()) {
        return;
    }
    const TimeSpan first = spans.front();
    const bool stops = first.to_s < recording.duration_s;
    readings.start_A = largestMagnitude(*current, first.from_s, first.from_s + 0.5);
    readings.running_A = current->mean(std::max(first.from_s, first.to_s - 1.5), first.to_s - 0.5);
    readings.loaded_s = std::max(first.from_s, first.to_s - 1);
    const auto opens_s = sensorOpens_s(workings, recording);
    const auto reached_s = opens_s ? opens_s : nearlyReached_s(*vacuum, recording.duration_s);
    if (reached_s && *reached_s > first.from_s) {
        readings.pumpDown_s = *reached_s - first.from_s;
    }
    if (stops) {
        readings.stopVacuum_Pa = vacuum->at(first.to_s);
    }
    if (opens_s && stops && first.to_s >= *opens_s && !workings.timers.empty()) {
        readings.runOn_s = first.to_s - *opens_s;
    }
}

void readPresses(TestReadings& readings, const Circuit& circuit, const Workings& workings,
                 const TestRuns& runs) {
    const PartId& pump = workings.pumps.front();
    const Channel* current = runs.presses.part(pump, probe::kCurrent);
    if (current == nullptr) {
        return;
    }
    const double threshold_A = runningThreshold_A(circuit.parts.at(pump));
    for (std::size_t i = 0; i < runs.press_s.size(); ++i) {
        const double until_s = i + 1 < runs.press_s.size() ? runs.press_s[i + 1] : runs.presses.duration_s;
        if (current->extremes(runs.press_s[i], until_s).highest > threshold_A) {
            readings.pressesToStart = static_cast<int>(i) + 1;
            return;
        }
    }
}

void readReserve(TestReadings& readings, const Workings& workings, const TestRuns& runs) {
    const PartId& booster = workings.boosters.front();
    const Channel* given = runs.unplugged.part(booster, probe::kAssist);
    const Channel* asked = runs.unplugged.part(booster, probe::kAssistAsked);
    if (given == nullptr || asked == nullptr) {
        return;
    }
    for (const double at_s : runs.press_s) {
        const double until_s = at_s + 1.5;
        if (given->extremes(at_s, until_s).highest <
            kAssistedShare * asked->extremes(at_s, until_s).highest) {
            break;
        }
        ++readings.assistedPresses;
    }
    if (const Channel* slowing = runs.presses.part(booster, probe::kDeceleration)) {
        readings.deceleration_mps2 = slowing->extremes(runs.press_s[0], runs.press_s[0] + 1.5).highest;
    }
}

} // namespace

TestReadings testReadings(const Circuit& circuit, const Workings& workings, const TestRuns& runs) {
    TestReadings readings;
    if (!workings.pumps.empty()) {
        readPumpDown(readings, circuit, workings, runs);
        readPresses(readings, circuit, workings, runs);
    }
    if (!workings.boosters.empty()) {
        readReserve(readings, workings, runs);
    }
    if (const Channel* vacuum = vacuumThatCounts(runs.rest, circuit, workings)) {
        readings.afterRest_Pa = vacuum->at(TestRuns::kRest_s);
    }
    return readings;
}

StandingTests standingTestsOf(const Survey& survey) {
    StandingTests tests{workingsOf(survey), {}, {}};
    tests.runs = testRunsOf(survey.circuit(), tests.workings);
    tests.readings = testReadings(survey.circuit(), tests.workings, tests.runs);
    return tests;
}

} // namespace pumpwright
