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

QString vacuumReading(double vacuum_Pa) {
    const double shown_Pa = kVacuumStep_Pa * std::round(vacuum_Pa / kVacuumStep_Pa);
    return readingText(shown_Pa + 0.0, QuantityKind::GaugeVacuum); // + 0.0: no minus before a zero
}

/// Parts on whose symbol the vacuum is worth reading: where it is stored, and where it is sensed.
bool showsVacuum(const PartKind& kind, const Part& part, const Features& features) {
    const bool senses = !kind.ports(part).empty() && !features.contacts.empty();
    const bool stores = kind.ports(part).size() == 1 && kind.terminals(part).empty();
    return senses || stores;
}

/// Of the first port that has samples, where the part shows it.
const Channel* shownVacuum(const PartId& id, const PartKind& kind, const Part& part, const Features& features,
                           const Recording& recording) {
    if (!showsVacuum(kind, part, features)) {
        return nullptr;
    }
    for (const PortSpec& port : kind.ports(part)) {
        const Channel* vacuum = recording.port({id, port.name});
        if (vacuum && !vacuum->times_s.empty()) {
            return vacuum;
        }
    }
    return nullptr;
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

} // namespace

/// A part's channels, and what of its kind tells how they are shown.
struct LiveReader::PartChannels {
    PartId id;
    const Channel* contact;
    const Channel* coil;
    const Channel* speed;
    const Channel* travel;
    const Channel* openShare;
    const Channel* remaining;
    const Channel* vacuum;
    bool restsClosed;
    bool isFuse;
    double travelMax_m; ///< 0: does not travel
};

struct LiveReader::WireChannels {
    WireId id;
    const Channel* current;
    const Channel* voltage;
};

namespace {

using PartChannels = LiveReader::PartChannels;
using WireChannels = LiveReader::WireChannels;

PartChannels channelsOf(const PartId& id, const Part& part, const Recording& recording) {
    const PartKind& kind = kindOf(part);
    const Features features = kind.features(part);
    return {id,
            recording.part(id, probe::kContact),
            recording.part(id, probe::kEnergised),
            recording.part(id, probe::kSpeed),
            recording.part(id, probe::kTravel),
            recording.part(id, probe::kOpenShare),
            recording.part(id, probe::kRemaining),
            shownVacuum(id, kind, part, features, recording),
            restsClosed(features),
            features.fuse.has_value(),
            features.booster ? features.booster->travelMax_m : 0};
}

PartLive partLive(const PartChannels& part, const Glance& glance) {
    const double time_s = glance.time_s;
    PartLive live;
    live.known = true;
    const auto contact = sampleAt(part.contact, time_s);
    live.closed = contact ? isSet(*contact) : part.restsClosed;
    live.energised = isSet(valueAt(part.coil, time_s)) || std::abs(valueAt(part.speed, time_s)) > 1;
    if (part.travelMax_m > 0) {
        const double share = valueAt(part.travel, time_s) / part.travelMax_m;
        live.travel = std::round(kTravelSteps * std::clamp(share, 0.0, 1.0)) / kTravelSteps;
    }
    live.flashes = flashes(part.contact, glance, isSet) || flashes(part.coil, glance, isSet);
    if (live.flashes) {
        live.closed = false;
        live.energised = true;
        live.reading = flashingReading(part.contact ? part.contact : part.coil, glance);
    } else if (part.isFuse && valueAt(part.openShare, time_s) >= 1) {
        live.closed = false;
        live.reading = QCoreApplication::translate("pumpwright::LiveState", "blown");
    } else if (const double left_s = valueAt(part.remaining, time_s); left_s > 0) {
        live.reading = readingText(kTimeStep_s * std::ceil(left_s / kTimeStep_s), QuantityKind::Time);
    } else if (const auto vacuum_Pa = sampleAt(part.vacuum, time_s)) {
        live.reading = vacuumReading(*vacuum_Pa);
    }
    return live;
}

WireLive wireLive(const WireChannels& wire, const Glance& glance) {
    const auto carries = [](double current_A) { return std::abs(current_A) >= kLeastCurrent_A; };
    const auto isFed = [](double voltage_V) { return std::abs(voltage_V) >= kLeastVoltage_V; };
    const bool flickers = flashes(wire.current, glance, carries) || flashes(wire.voltage, glance, isFed);
    WireLive live;
    const double current_A = flickers && wire.current ? wire.current->mean(glance.time_s - glance.calm_s,
                                                                           glance.time_s + glance.calm_s)
                                                      : valueAt(wire.current, glance.time_s);
    live.current_A = carries(current_A) ? current_A : 0.0;
    live.live = flickers || live.current_A != 0.0 || isFed(valueAt(wire.voltage, glance.time_s));
    return live;
}

/// The maps are filled in order of their keys, so that each entry goes to the end.
LiveState stateAt(const std::vector<PartChannels>& parts, const std::vector<WireChannels>& wires,
                  const Glance& glance) {
    LiveState state;
    for (const PartChannels& part : parts) {
        state.parts.emplace_hint(state.parts.end(), part.id, partLive(part, glance));
    }
    for (const WireChannels& wire : wires) {
        state.wires.emplace_hint(state.wires.end(), wire.id, wireLive(wire, glance));
    }
    return state;
}

} // namespace

LiveReader::LiveReader(const Circuit& circuit, const Recording& recording)
    : m_duration_s(recording.duration_s) {
    for (const auto& [id, part] : circuit.parts) {
        m_parts.push_back(channelsOf(id, part, recording));
    }
    for (const auto& [id, wire] : circuit.wires) {
        m_wires.push_back({id, recording.wire(id, probe::kCurrent), recording.terminal(wire.from)});
    }
}

LiveReader::~LiveReader() = default;

LiveState LiveReader::at(double time_s, double pace) const {
    return stateAt(m_parts, m_wires, {time_s, kCalm_s * pace});
}

LiveState LiveReader::now() const {
    return stateAt(m_parts, m_wires, {m_duration_s, kLiveCalm_s, true});
}

QString readingText(double si, QuantityKind kind) {
    if (si == 0 || !std::isfinite(si)) {
        return QString::fromStdString(formatQuantity(si, kind));
    }
    const double unit = std::pow(10.0, std::floor(std::log10(std::abs(si))) - 2);
    return QString::fromStdString(formatQuantity(std::round(si / unit) * unit, kind));
}

LiveState liveState(const Circuit& circuit, const Recording& recording, double time_s, double pace) {
    return LiveReader(circuit, recording).at(time_s, pace);
}

LiveState liveStateNow(const Circuit& circuit, const Recording& recording) {
    return LiveReader(circuit, recording).now();
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
