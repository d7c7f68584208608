#pragma once

#include "core/circuit/circuit.h"
#include "core/simulate/recording.h"
#include "core/study/bench_log.h"

#include <QString>

#include <set>
#include <vector>

namespace pumpwright {

/// What a line of the Drive chart means; colour and dash follow from it.
enum class TraceRole {
    BoosterVacuum,
    SwitchVacuum,
    AssistAsked,
    AssistDelivered,
    PumpCurrent,
    Voltage,
    Picked,
    State,
    Measured,
    OfTrial
};

/// One channel of the recording as a line of the chart.
struct ChartTrace {
    QString name; ///< "A1 booster"
    TraceRole role = TraceRole::State;
    const Channel* channel = nullptr; ///< lives as long as the recording
};

/// A level that traces are compared with: a set point.
struct ChartLevel {
    QString name; ///< "B1 closes"
    double si = 0;
};

/// A strip of the chart with one quantity over the time axis that all lanes share. A lane of states has one
/// row for each trace.
struct ChartLane {
    enum class Sort { Vacuum, Assist, Current, Voltage, Picked, States };
    Sort sort = Sort::States;
    QString title;
    QuantityKind kind = QuantityKind::Number;
    std::vector<ChartTrace> traces;
    std::vector<ChartLevel> levels;
};

/// Parts and wires whose currents are asked for beside the standing lanes.
struct PickedParts {
    std::set<PartId> parts;
    std::set<WireId> wires;
};

/// The lanes that a recording of this circuit can fill, from top to bottom; lanes without a trace are left
/// out.
std::vector<ChartLane> chartLanes(const Circuit& circuit, const Recording& recording,
                                  const PickedParts& picked = {});

/// A trace from elsewhere, laid over those of the drive: measured, or of a trial.
struct OverlayTrace {
    QString name;
    TraceRole role = TraceRole::Measured;
    Channel channel;
};

std::vector<OverlayTrace> overlayOf(const BenchLog& log);

/// Adds the traces to the lanes of their quantity; they must live as long as the lanes. What has no lane is
/// left out.
void layOver(std::vector<ChartLane>& lanes, const std::vector<OverlayTrace>& traces);

/// "closed" or "open" for a contact, "on" or "off" for what is energised.
QString stateText(const Channel& channel, double time_s);

} // namespace pumpwright
