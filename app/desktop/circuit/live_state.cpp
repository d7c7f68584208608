#include "app/desktop/circuit/live_state.h"

#include "core/parts/part_kind.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <optional>

namespace pumpwright {
namespace {

// Below these nothing is marked: what leaks through a meter is not worth an arrow.
constexpr double kLeastVoltage_V = 1.0;
constexpr double kLeastCurrent_A = 0.005;
constexpr double kVacuumStep_Pa = 100; // no gauge in a car shows more
constexpr double kTimeStep_s = 0.1;    // of a timer that runs

/// [s on the screen] Three changes of state within twice this time are not shown one by one: three flashes a
/// second are held to be the most that is safe [WCAG 2.1, success criterion 2.3.1], and two are shown at
/// most.
constexpr double kCalm_s = 1;
/// [s of the drive] between changes of what is called chattering; what only looks so because the drive is
/// played fast is not.
constexpr double kChatterCalm_s = 0.5;
/// [s] between changes that follow each other too quickly to be shown while they happen: two a second.
constexpr double kLiveCalm_s = 0.5;
constexpr double kTravelSteps = 12; ///< in which a diaphragm is drawn

/// None where the channel is missing, or has no samples because the run stopped before its first step.
std::optional<double> sampleAt(const Channel* channel, double time_s) {
    return channel && !channel->times_s.empty() ? std::optional(channel->at(time_s)) : std::nullopt;
}

double valueAt(const Channel* channel, double time_s) {
    return sampleAt(channel, time_s).value_or(0.0);
}

bool restsClosed(const Features& features) {
    return features.fuse.has_value() ||
           (!features.contacts.empty() && features.contacts.front().closedAtRest);
}

QString vacuumReading(const PartId& id, const PartKind& kind, const Part& part, const Recording& recording,
                      double time_s) {
    for (const PortSpec& port : kind.ports(part)) {
        if (const auto vacuum_Pa = sampleAt(recording.port({id, port.name}), time_s)) {
            const double shown_Pa = kVacuumStep_Pa * std::round(*vacuum_Pa / kVacuumStep_Pa);
            return readingText(shown_Pa + 0.0, QuantityKind::GaugeVacuum); // + 0.0: no minus before a zero
        }
    }
    return {};
}

/// Parts on whose symbol the vacuum is worth reading: where it is stored, and where it is sensed.
bool showsVacuum(const PartKind& kind, const Part& part, const Features& features) {
    const bool senses = !kind.ports(part).empty() && !features.contacts.empty();
    const bool stores = kind.ports(part).size() == 1 && kind.terminals(part).empty();
    return senses || stores;
}

/// The instant that is shown, and how long the drive takes for what must not flash on the screen.
struct Glance {
    double time_s;
    double calm_s;         ///< 0 while the cursor stands
    bool isLatest = false; ///< nothing is known of what comes after it
};

/// The times around a glance at which `isOn` of a channel's values changes.
template <class Predicate>
std::vector<double> changesAround(const Channel& channel, const Glance& glance, Predicate isOn) {
    const auto& times = channel.times_s;
    const double from_s = glance.time_s - 2 * glance.calm_s;
    const auto from = std::upper_bound(times.begin(), times.end(), from_s);
    const auto to = std::upper_bound(from, times.end(), glance.time_s + 2 * glance.calm_s);
    std::vector<double> changes_s;
    bool before = isOn(channel.at(from_s));
    for (auto at = from; at != to; ++at) {
        const auto index = static_cast<std::size_t>(at - times.begin());
        const bool now = isOn(static_cast<double>(channel.values[index]));
        if (now != before) {
            changes_s.push_back(*at);
        }
        before = now;
    }
    return changes_s;
}

/// Whether the glance falls among three changes or more that follow each other too quickly to be shown.
/// Between such runs states are calm: a run begins and ends with one change of what is shown.
template <class Predicate>
bool flashes(const Channel* channel, const Glance& glance, Predicate isOn) {
    if (!channel || channel->times_s.empty() || glance.calm_s <= 0) {
        return false;
    }
    const std::vector<double> changes_s = changesAround(*channel, glance, isOn);
    const auto near = [&](double one_s, double other_s) { return other_s - one_s <= glance.calm_s; };
    if (glance.isLatest) {
        const auto latest = changes_s.rbegin();
        return changes_s.size() >= 3 && near(latest[0], glance.time_s) && near(latest[1], latest[0]) &&
               near(latest[2], latest[1]);
    }
    const auto next = std::upper_bound(changes_s.begin(), changes_s.end(), glance.time_s);
    if (next == changes_s.begin() || next == changes_s.end()) {
        return false;
    }
    const auto last = std::prev(next);
    const bool oneBefore = last != changes_s.begin() && near(*std::prev(last), *last);
    const bool oneAfter = std::next(next) != changes_s.end() && near(*next, *std::next(next));
    return near(*last, *next) && (oneBefore || oneAfter);
}

bool isSet(double state) {
    return state >= 0.5;
}

QString flashingReading(const Channel* channel, const Glance& glance) {
    return flashes(channel, Glance{glance.time_s, kChatterCalm_s, glance.isLatest}, isSet)
               ? QCoreApplication::translate("pumpwright::LiveState", "chattering")
               : QCoreApplication::translate("pumpwright::LiveState", "switching");
}

PartLive partLive(const PartId& id, const Part& part, const Recording& recording, const Glance& glance) {
    const PartKind& kind = kindOf(part);
    const Features features = kind.features(part);
    const double time_s = glance.time_s;
    const Channel* contacts = recording.part(id, probe::kContact);
    const Channel* coil = recording.part(id, probe::kEnergised);
    PartLive live;
    live.known = true;
    const auto contact = sampleAt(contacts, time_s);
    live.closed = contact ? isSet(*contact) : restsClosed(features);
    live.energised =
        isSet(valueAt(coil, time_s)) || std::abs(valueAt(recording.part(id, probe::kSpeed), time_s)) > 1;
    if (features.booster) {
        const double share =
            valueAt(recording.part(id, probe::kTravel), time_s) / features.booster->travelMax_m;
        live.travel = std::round(kTravelSteps * std::clamp(share, 0.0, 1.0)) / kTravelSteps;
    }
    live.flashes = flashes(contacts, glance, isSet) || flashes(coil, glance, isSet);
    if (live.flashes) {
        live.closed = false;
        live.energised = true;
        live.reading = flashingReading(contacts ? contacts : coil, glance);
    } else if (features.fuse && valueAt(recording.part(id, probe::kOpenShare), time_s) >= 1) {
        live.closed = false;
        live.reading = QCoreApplication::translate("pumpwright::LiveState", "blown");
    } else if (const double left_s = valueAt(recording.part(id, probe::kRemaining), time_s); left_s > 0) {
        live.reading = readingText(kTimeStep_s * std::ceil(left_s / kTimeStep_s), QuantityKind::Time);
    } else if (showsVacuum(kind, part, features)) {
        live.reading = vacuumReading(id, kind, part, recording, time_s);
    }
    return live;
}

WireLive wireLive(const WireId& id, const Wire& wire, const Recording& recording, const Glance& glance) {
    const Channel* current = recording.wire(id, probe::kCurrent);
    const Channel* voltage = recording.terminal(wire.from);
    const auto carries = [](double current_A) { return std::abs(current_A) >= kLeastCurrent_A; };
    const auto isFed = [](double voltage_V) { return std::abs(voltage_V) >= kLeastVoltage_V; };
    const bool flickers = flashes(current, glance, carries) || flashes(voltage, glance, isFed);
    WireLive live;
    const double current_A = flickers && current
                                 ? current->mean(glance.time_s - glance.calm_s, glance.time_s + glance.calm_s)
                                 : valueAt(current, glance.time_s);
    live.current_A = carries(current_A) ? current_A : 0.0;
    live.live = flickers || live.current_A != 0.0 || isFed(valueAt(voltage, glance.time_s));
    return live;
}

} // namespace

QString readingText(double si, QuantityKind kind) {
    if (si == 0 || !std::isfinite(si)) {
        return QString::fromStdString(formatQuantity(si, kind));
    }
    const double unit = std::pow(10.0, std::floor(std::log10(std::abs(si))) - 2);
    return QString::fromStdString(formatQuantity(std::round(si / unit) * unit, kind));
}

namespace {

LiveState stateAt(const Circuit& circuit, const Recording& recording, const Glance& glance) {
    LiveState state;
    for (const auto& [id, part] : circuit.parts) {
        state.parts.emplace(id, partLive(id, part, recording, glance));
    }
    for (const auto& [id, wire] : circuit.wires) {
        state.wires.emplace(id, wireLive(id, wire, recording, glance));
    }
    return state;
}

} // namespace

LiveState liveState(const Circuit& circuit, const Recording& recording, double time_s, double pace) {
    return stateAt(circuit, recording, {time_s, kCalm_s * pace});
}

LiveState liveStateNow(const Circuit& circuit, const Recording& recording) {
    return stateAt(circuit, recording, {recording.duration_s, kLiveCalm_s, true});
}

LiveState restState(const Circuit& circuit) {
    LiveState state;
    for (const auto& [id, part] : circuit.parts) {
        PartLive live;
        live.closed = restsClosed(kindOf(part).features(part));
        state.parts.emplace(id, live);
    }
    return state;
}

} // namespace pumpwright
