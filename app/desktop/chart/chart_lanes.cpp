#include "app/desktop/chart/chart_lanes.h"

#include "app/desktop/panels/quantity_text.h"
#include "core/parts/part_kind.h"

#include <QCoreApplication>

#include <algorithm>

namespace pumpwright {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("pumpwright", text);
}

void addTrace(ChartLane& lane, const QString& name, TraceRole role, const Channel* channel) {
    if (channel && !channel->times_s.empty()) {
        lane.traces.push_back({name, role, channel});
    }
}

/// "K1 pump relay", or the kind where the part has no label.
QString partName(const Part& part) {
    const PartKind* kind = findPartKind(part.kind);
    const QString label = !part.label.empty() ? shown(part.label)
                          : kind              ? translatedWords(kind->title()).toLower()
                                              : QString();
    return QStringLiteral("%1 %2").arg(shown(part.reference), label).trimmed();
}

void addSetPoints(ChartLane& lane, const Part& part) {
    const PartKind& kind = kindOf(part);
    const double closes_Pa = kind.value(part, "setPoint_Pa");
    const QString reference = shown(part.reference);
    lane.levels.push_back({tr("%1 closes").arg(reference), closes_Pa});
    lane.levels.push_back({tr("%1 opens").arg(reference), closes_Pa + kind.value(part, "differential_Pa")});
}

ChartLane vacuumLane(const Circuit& circuit, const Recording& recording) {
    ChartLane lane{ChartLane::Sort::Vacuum, tr("Vacuum"), QuantityKind::GaugeVacuum, {}, {}};
    for (const auto& [id, part] : circuit.parts) {
        if (part.kind == "booster") {
            addTrace(lane, partName(part), TraceRole::BoosterVacuum, recording.port({id, "vacuum"}));
        }
    }
    for (const auto& [id, part] : circuit.parts) {
        if (part.kind == "vacuum-switch") {
            addTrace(lane, partName(part), TraceRole::SwitchVacuum, recording.port({id, "vacuum"}));
            addSetPoints(lane, part);
        }
    }
    return lane;
}

ChartLane assistLane(const Circuit& circuit, const Recording& recording) {
    ChartLane lane{ChartLane::Sort::Assist, tr("Assist"), QuantityKind::Force, {}, {}};
    for (const auto& [id, part] : circuit.parts) {
        if (part.kind == "booster") {
            const QString reference = shown(part.reference);
            addTrace(lane, tr("%1 asked").arg(reference), TraceRole::AssistAsked,
                     recording.part(id, probe::kAssistAsked));
            addTrace(lane, tr("%1 delivered").arg(reference), TraceRole::AssistDelivered,
                     recording.part(id, probe::kAssist));
        }
    }
    return lane;
}

ChartLane currentLane(const Circuit& circuit, const Recording& recording) {
    ChartLane lane{ChartLane::Sort::Current, tr("Current"), QuantityKind::Current, {}, {}};
    for (const auto& [id, part] : circuit.parts) {
        if (part.kind == "pump") {
            addTrace(lane, partName(part), TraceRole::PumpCurrent, recording.part(id, probe::kCurrent));
        }
    }
    return lane;
}

ChartLane voltageLane(const Circuit& circuit, const Recording& recording) {
    ChartLane lane{ChartLane::Sort::Voltage, tr("Voltage"), QuantityKind::Voltage, {}, {}};
    for (const auto& [id, part] : circuit.parts) {
        if (part.kind == "supply") {
            addTrace(lane, tr("%1 at 30").arg(shown(part.reference)), TraceRole::Voltage,
                     recording.terminal({id, "30"}));
        } else if (part.kind == "pump") {
            addTrace(lane, tr("%1 at +").arg(shown(part.reference)), TraceRole::Voltage,
                     recording.terminal({id, "+"}));
        }
    }
    return lane;
}

/// Currents of what is selected on the canvas, except the pump's, which has its lane.
ChartLane pickedLane(const Circuit& circuit, const Recording& recording, const PickedParts& picked) {
    ChartLane lane{ChartLane::Sort::Picked, tr("Current of the selection"), QuantityKind::Current, {}, {}};
    for (const WireId& id : picked.wires) {
        if (const auto wire = circuit.wires.find(id); wire != circuit.wires.end()) {
            addTrace(lane, shown(wire->second.reference), TraceRole::Picked,
                     recording.wire(id, probe::kCurrent));
        }
    }
    for (const PartId& id : picked.parts) {
        if (const auto part = circuit.parts.find(id);
            part != circuit.parts.end() && part->second.kind != "pump") {
            const QString name = partName(part->second);
            addTrace(lane, name, TraceRole::Picked, recording.part(id, probe::kCurrent));
            addTrace(lane, tr("%1: coil").arg(name), TraceRole::Picked,
                     recording.part(id, probe::kCoilCurrent));
            addTrace(lane, tr("%1: contact").arg(name), TraceRole::Picked,
                     recording.part(id, probe::kContactCurrent));
        }
    }
    return lane;
}

bool isContact(const std::string& name) {
    const std::string contact = probe::kContact;
    return name == contact || name.rfind(contact + " ", 0) == 0;
}

ChartLane stateLane(const Circuit& circuit, const Recording& recording) {
    ChartLane lane{ChartLane::Sort::States, tr("Contacts"), QuantityKind::Number, {}, {}};
    for (const Channel& channel : recording.channels) {
        const auto part = circuit.parts.find(PartId{channel.key.id});
        if (channel.key.subject != Subject::Part || part == circuit.parts.end()) {
            continue;
        }
        if (isContact(channel.key.name)) {
            const std::string which = channel.key.name.substr(std::string_view(probe::kContact).size());
            addTrace(lane, shown(part->second.reference + which), TraceRole::State, &channel);
        } else if (channel.key.name == probe::kEnergised && part->second.kind == "lamp") {
            addTrace(lane, shown(part->second.reference), TraceRole::State, &channel);
        }
    }
    return lane;
}

} // namespace

std::vector<ChartLane> chartLanes(const Circuit& circuit, const Recording& recording,
                                  const PickedParts& picked) {
    std::vector<ChartLane> lanes{vacuumLane(circuit, recording),  assistLane(circuit, recording),
                                 currentLane(circuit, recording), pickedLane(circuit, recording, picked),
                                 voltageLane(circuit, recording), stateLane(circuit, recording)};
    std::erase_if(lanes, [](const ChartLane& lane) { return lane.traces.empty(); });
    return lanes;
}

std::vector<OverlayTrace> overlayOf(const BenchLog& log) {
    std::vector<OverlayTrace> traces;
    for (const LogTrace& trace : log.traces) {
        OverlayTrace made{tr("%1 measured").arg(shown(trace.name)), TraceRole::Measured, {}};
        made.channel.key = trace.key;
        made.channel.probe.kind = trace.kind;
        made.channel.times_s = trace.times_s;
        made.channel.values.assign(trace.values.begin(), trace.values.end());
        traces.push_back(std::move(made));
    }
    return traces;
}

void layOver(std::vector<ChartLane>& lanes, const std::vector<OverlayTrace>& traces) {
    for (const OverlayTrace& trace : traces) {
        const auto lane = std::find_if(lanes.begin(), lanes.end(), [&](const ChartLane& one) {
            return one.kind == trace.channel.probe.kind && one.sort != ChartLane::Sort::States;
        });
        if (lane != lanes.end()) {
            addTrace(*lane, trace.name, trace.role, &trace.channel);
        }
    }
}

QString stateText(const Channel& channel, double time_s) {
    const bool on = channel.at(time_s) > 0.5;
    if (isContact(channel.key.name)) {
        return on ? tr("closed") : tr("open");
    }
    return on ? tr("on") : tr("off");
}

} // namespace pumpwright
