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

PartLive partLive(const PartId& id, const Part& part, const Recording& recording, double time_s) {
    const PartKind& kind = kindOf(part);
    const Features features = kind.features(part);
    PartLive live;
    live.known = true;
    const auto contact = sampleAt(recording.part(id, probe::kContact), time_s);
    live.closed = contact ? *contact >= 0.5 : restsClosed(features);
    live.energised = valueAt(recording.part(id, probe::kEnergised), time_s) >= 0.5 ||
                     std::abs(valueAt(recording.part(id, probe::kSpeed), time_s)) > 1;
    if (features.fuse && valueAt(recording.part(id, probe::kOpenShare), time_s) >= 1) {
        live.closed = false;
        live.reading = QCoreApplication::translate("pumpwright::LiveState", "blown");
    } else if (showsVacuum(kind, part, features)) {
        live.reading = vacuumReading(id, kind, part, recording, time_s);
    }
    return live;
}

WireLive wireLive(const WireId& id, const Wire& wire, const Recording& recording, double time_s) {
    WireLive live;
    const double current_A = valueAt(recording.wire(id, probe::kCurrent), time_s);
    live.current_A = std::abs(current_A) >= kLeastCurrent_A ? current_A : 0.0;
    const double voltage_V = valueAt(recording.terminal(wire.from), time_s);
    live.live = live.current_A != 0.0 || std::abs(voltage_V) >= kLeastVoltage_V;
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

LiveState liveState(const Circuit& circuit, const Recording& recording, double time_s) {
    LiveState state;
    for (const auto& [id, part] : circuit.parts) {
        state.parts.emplace(id, partLive(id, part, recording, time_s));
    }
    for (const auto& [id, wire] : circuit.wires) {
        state.wires.emplace(id, wireLive(id, wire, recording, time_s));
    }
    return state;
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
