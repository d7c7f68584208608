#include "app/desktop/sheet/drive_figure.h"

#include "core/parts/part_kind.h"
#include "core/units/visible_text.h"

#include <algorithm>

namespace pumpwright {
namespace {

QString text(const std::string& utf8) {
    return QString::fromStdString(visibleText(utf8));
}

QString text(std::string_view utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

QString laneTitle(const QString& what, QuantityKind kind) {
    return QStringLiteral("%1 [%2]").arg(what, text(displayUnits(kind).front().symbol));
}

double shown(double si, QuantityKind kind) {
    const DisplayUnit& unit = displayUnits(kind).front();
    return (si - unit.offset) / unit.factor;
}

void addCurve(DriveFigure::Lane& lane, const Channel* channel, QuantityKind kind, const QString& name) {
    if (channel == nullptr || channel->times_s.empty()) {
        return;
    }
    DriveFigure::Curve curve{name, channel->probe.stepped, {}};
    curve.samples.reserve(static_cast<qsizetype>(channel->times_s.size()));
    for (std::size_t i = 0; i < channel->times_s.size(); ++i) {
        curve.samples.append({channel->times_s[i], shown(static_cast<double>(channel->values[i]), kind)});
    }
    lane.curves.append(curve);
}

/// The vacuum that a sensing part is set to, and where it lets go again: set point plus differential.
void addLevels(DriveFigure::Lane& lane, const Part& part, const PartKind& kind) {
    const std::vector<std::string> keys = kind.features(part).setPoints;
    double vacuum_Pa = 0;
    double differential_Pa = 0;
    for (const ParameterSpec& parameter : kind.parameters()) {
        if (std::ranges::find(keys, parameter.key) == keys.end()) {
            continue;
        }
        if (parameter.kind == QuantityKind::GaugeVacuum) {
            vacuum_Pa = kind.value(part, parameter.key);
        } else if (parameter.kind == QuantityKind::PressureDifference) {
            differential_Pa = kind.value(part, parameter.key);
        }
    }
    if (vacuum_Pa > 0) {
        const QString reference = text(part.reference);
        lane.levels.append(
            {reference + QStringLiteral(" set point"), shown(vacuum_Pa, QuantityKind::GaugeVacuum)});
        if (differential_Pa > 0) {
            lane.levels.append({reference + QStringLiteral(" set point + differential"),
                                shown(vacuum_Pa + differential_Pa, QuantityKind::GaugeVacuum)});
        }
    }
}

DriveFigure::Lane vacuumLane(const Circuit& circuit, const Recording& recording) {
    DriveFigure::Lane lane{laneTitle(QStringLiteral("Vacuum"), QuantityKind::GaugeVacuum), {}, {}};
    for (const auto& [id, part] : circuit.parts) {
        const PartKind& kind = kindOf(part);
        addCurve(lane, recording.port({id, "vacuum"}), QuantityKind::GaugeVacuum,
                 QStringLiteral("at %1 %2").arg(text(part.reference), text(kind.title()).toLower()));
        addLevels(lane, part, kind);
    }
    return lane;
}

DriveFigure::Lane assistLane(const Circuit& circuit, const Recording& recording) {
    DriveFigure::Lane lane{laneTitle(QStringLiteral("Assist"), QuantityKind::Force), {}, {}};
    if (circuit.plan.presses.empty()) {
        return lane;
    }
    for (const auto& [id, part] : circuit.parts) {
        const QString reference = text(part.reference);
        addCurve(lane, recording.part(id, probe::kAssist), QuantityKind::Force,
                 reference + QStringLiteral(" assist"));
        addCurve(lane, recording.part(id, probe::kAssistAsked), QuantityKind::Force,
                 reference + QStringLiteral(" assist asked for"));
    }
    return lane;
}

DriveFigure::Lane motorLane(const Circuit& circuit, const Recording& recording) {
    DriveFigure::Lane lane{laneTitle(QStringLiteral("Motor"), QuantityKind::Current), {}, {}};
    for (const auto& [id, part] : circuit.parts) {
        const auto loads = kindOf(part).features(part).loads;
        if (std::ranges::find(loads, LoadSort::Motor, &Load::sort) != loads.end()) {
            addCurve(lane, recording.part(id, probe::kCurrent), QuantityKind::Current, text(part.reference));
        }
    }
    return lane;
}

bool isContactState(const Channel& channel) {
    const std::string name = probe::kContact;
    return channel.key.subject == Subject::Part &&
           (channel.key.name == name || channel.key.name.starts_with(name + " "));
}

DriveFigure::Bar barOf(const Channel& channel, const Part& part, double end_s) {
    DriveFigure::Bar bar;
    bar.name = text(part.reference) + text(channel.key.name.substr(std::string_view(probe::kContact).size()));
    for (std::size_t i = 0; i < channel.times_s.size(); ++i) {
        const bool closed = static_cast<double>(channel.values[i]) > 0.5;
        const double to_s = i + 1 < channel.times_s.size() ? channel.times_s[i + 1] : end_s;
        if (!closed || to_s <= channel.times_s[i]) {
            continue;
        }
        if (!bar.closed.isEmpty() && bar.closed.back().y() >= channel.times_s[i]) {
            bar.closed.back().setY(to_s);
        } else {
            bar.closed.append({channel.times_s[i], to_s});
        }
    }
    return bar;
}

} // namespace

DriveFigure driveFigure(const Circuit& circuit, const DriveResult& drive) {
    const Recording& recording = drive.recording;
    DriveFigure figure;
    figure.title = QStringLiteral("Drive chart: %1").arg(text(circuit.plan.name));
    figure.duration_s = recording.duration_s;
    for (const DriveFigure::Lane& lane :
         {vacuumLane(circuit, recording), assistLane(circuit, recording), motorLane(circuit, recording)}) {
        if (!lane.curves.isEmpty()) {
            figure.lanes.append(lane);
        }
    }
    for (const Channel& channel : recording.channels) {
        const auto part = circuit.parts.find(PartId{channel.key.id});
        if (isContactState(channel) && part != circuit.parts.end()) {
            figure.bars.append(barOf(channel, part->second, recording.duration_s));
        }
    }
    for (const Press& press : circuit.plan.presses) {
        if (press.at_s < recording.duration_s) {
            figure.presses.append(
                {press.at_s, std::min(press.at_s + press.hold_s + press.rise_s, recording.duration_s)});
        }
    }
    return figure;
}

} // namespace pumpwright
