#include "app/desktop/panels/plan_table.h"

#include "core/parts/document_fields.h"

#include <QCoreApplication>

#include <algorithm>

namespace pumpwright {
namespace {

constexpr double kNextPress_s = 10;
constexpr double kNextSpan_s = 30;

QString tr(const char* text) {
    return QCoreApplication::translate("pumpwright", text);
}

template <class Entry>
PlanColumn column(const QString& title, const ParameterSpec& spec, std::vector<Entry> DrivePlan::*list,
                  double Entry::*member) {
    PlanColumn made;
    made.title = title;
    made.range = rangeOf(spec);
    made.quantity = [=](const DrivePlan& plan, std::size_t row) { return (plan.*list)[row].*member; };
    made.setQuantity = [=](DrivePlan& plan, std::size_t row, double value) {
        (plan.*list)[row].*member = value;
    };
    return made;
}

template <class Entry>
void addListFunctions(PlanTable& table, std::vector<Entry> DrivePlan::*list, double Entry::*time) {
    table.rowCount = [=](const DrivePlan& plan) { return (plan.*list).size(); };
    table.remove = [=](DrivePlan& plan, std::size_t row) {
        (plan.*list).erase((plan.*list).begin() + static_cast<std::ptrdiff_t>(row));
    };
    table.sort = [=](DrivePlan& plan) {
        std::stable_sort((plan.*list).begin(), (plan.*list).end(),
                         [=](const Entry& one, const Entry& other) { return one.*time < other.*time; });
    };
}

PlanColumn switchColumn(const Circuit& circuit) {
    PlanColumn made;
    made.title = tr("Switch");
    for (const auto& [id, part] : circuit.parts) {
        if (part.kind == "hand-switch") {
            const QString label = part.label.empty()
                                      ? shown(part.reference)
                                      : QStringLiteral("%1 %2").arg(shown(part.reference), shown(part.label));
            made.choices.push_back({shown(id.text), label});
        }
    }
    made.choice = [](const DrivePlan& plan, std::size_t row) {
        return shown(plan.switchMoves[row].part.text);
    };
    made.setChoice = [](DrivePlan& plan, std::size_t row, const QString& id) {
        plan.switchMoves[row].part = PartId{id.toStdString()};
    };
    return made;
}

PlanColumn onOffColumn() {
    PlanColumn made;
    made.title = tr("To");
    made.choices = {{QStringLiteral("on"), tr("on")}, {QStringLiteral("off"), tr("off")}};
    made.choice = [](const DrivePlan& plan, std::size_t row) {
        return plan.switchMoves[row].on ? QStringLiteral("on") : QStringLiteral("off");
    };
    made.setChoice = [](DrivePlan& plan, std::size_t row, const QString& id) {
        plan.switchMoves[row].on = id == QStringLiteral("on");
    };
    return made;
}

} // namespace

PlanTable pressTable() {
    PlanTable table;
    table.title = tr("Brake presses");
    table.row = tr("press");
    table.empty = tr("Nobody brakes. Add a press to see whether assist is there.");
    table.columns = {
        column(tr("At"), field::kAtTime, &DrivePlan::presses, &Press::at_s),
        column(tr("Hold"), field::kPressHold, &DrivePlan::presses, &Press::hold_s),
        column(tr("Force"), field::kPressForce, &DrivePlan::presses, &Press::force_N),
        column(tr("Rise"), field::kPressRise, &DrivePlan::presses, &Press::rise_s),
    };
    addListFunctions(table, &DrivePlan::presses, &Press::at_s);
    table.add = [](DrivePlan& plan) {
        Press press = plan.presses.empty() ? Press{} : plan.presses.back();
        press.at_s = std::min(press.at_s + kNextPress_s, plan.duration_s);
        plan.presses.push_back(press);
        return QString();
    };
    return table;
}

PlanTable switchMoveTable(const Circuit& circuit) {
    PlanTable table;
    table.title = tr("Switch moves");
    table.row = tr("switch move");
    table.empty = tr("Every hand switch stays as it is at the start.");
    table.columns = {column(tr("At"), field::kAtTime, &DrivePlan::switchMoves, &SwitchMove::at_s),
                     switchColumn(circuit), onOffColumn()};
    addListFunctions(table, &DrivePlan::switchMoves, &SwitchMove::at_s);
    const auto& switches = table.columns[1].choices;
    const QString first = switches.empty() ? QString() : switches.front().id;
    table.add = [first](DrivePlan& plan) {
        if (first.isEmpty()) {
            return tr("There is no hand switch in the circuit. Place one first.");
        }
        SwitchMove move{0, PartId{first.toStdString()}, true};
        if (!plan.switchMoves.empty()) {
            move = plan.switchMoves.back();
            move.at_s = std::min(move.at_s + kNextPress_s, plan.duration_s);
            move.on = !move.on;
        }
        plan.switchMoves.push_back(move);
        return QString();
    };
    return table;
}

PlanTable chargingTable() {
    PlanTable table;
    table.title = tr("Charging");
    table.row = tr("charging span");
    table.empty = tr("Neither engine nor converter feeds the 12 V system.");
    table.columns = {column(tr("From"), field::kFromTime, &DrivePlan::charging, &ChargingSpan::from_s),
                     column(tr("To"), field::kToTime, &DrivePlan::charging, &ChargingSpan::to_s)};
    addListFunctions(table, &DrivePlan::charging, &ChargingSpan::from_s);
    table.add = [](DrivePlan& plan) {
        const double from_s = plan.charging.empty() ? 0 : plan.charging.back().to_s;
        plan.charging.push_back({from_s, std::min(from_s + kNextSpan_s, std::max(from_s, plan.duration_s))});
        return QString();
    };
    return table;
}

PlanTable altitudeTable() {
    PlanTable table;
    table.title = tr("Altitude");
    table.row = tr("altitude point");
    table.empty = tr("The whole drive is at sea level.");
    table.columns = {
        column(tr("At"), field::kAtTime, &DrivePlan::altitude, &AltitudePoint::at_s),
        column(tr("Altitude"), field::kAltitude, &DrivePlan::altitude, &AltitudePoint::altitude_m)};
    addListFunctions(table, &DrivePlan::altitude, &AltitudePoint::at_s);
    table.add = [](DrivePlan& plan) {
        AltitudePoint point = plan.altitude.empty() ? AltitudePoint{} : plan.altitude.back();
        point.at_s = plan.altitude.empty() ? 0 : std::min(point.at_s + kNextSpan_s, plan.duration_s);
        plan.altitude.push_back(point);
        return QString();
    };
    return table;
}

} // namespace pumpwright
