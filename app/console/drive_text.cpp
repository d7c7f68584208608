#include "app/console/drive_texts.h"
#include "app/console/text_table.h"
#include "core/parts/part_kind.h"
#include "core/sheet/references.h"
#include "core/study/drive_summary.h"
#include "core/units/quantity_kind.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

std::string vacuum(double vacuum_Pa) {
    return fmt::format("{:.1f}", vacuum_Pa / displayUnits(QuantityKind::GaugeVacuum).front().factor);
}

std::string seconds(double time_s) {
    return fmt::format("{:.2f}", time_s);
}

std::size_t portCount(const Circuit& circuit, const PartId& id) {
    const Part& part = circuit.parts.at(id);
    return kindOf(part).ports(part).size();
}

std::string referenceOf(const Circuit& circuit, const PartId& id) {
    return circuit.parts.at(id).reference;
}

std::string vacuumText(const Circuit& circuit, const DriveSummary& summary) {
    SheetTable table{"Vacuum below ambient [kPa]",
                     {"At", "Port", "Lowest", "Highest", "At the end"},
                     {false, false, true, true, true},
                     {}};
    for (const VacuumSummary& one : summary.vacuum) {
        if (portCount(circuit, one.part) > 1) {
            continue; // tees and valves sit between the parts whose vacuum matters; --json has all
        }
        table.rows.push_back({partName(circuit, one.part), one.port, vacuum(one.lowest_Pa),
                              vacuum(one.highest_Pa), vacuum(one.atEnd_Pa)});
    }
    return textTable(table);
}

std::string pressesText(const Circuit& circuit, const DriveSummary& summary) {
    SheetTable table{"Brake presses",
                     {"At s", "Foot N", "Booster", "Vacuum before kPa", "Lowest kPa", "Assist N",
                      "Assist asked for N", "Got %"},
                     {true, true, false, true, true, true, true, true},
                     {}};
    for (const PressSummary& press : summary.presses) {
        const bool asked = press.assistAsked_N > 0;
        table.rows.push_back(
            {seconds(press.at_s), fmt::format("{:.0f}", press.force_N), referenceOf(circuit, press.booster),
             vacuum(press.vacuumBefore_Pa), vacuum(press.vacuumLowest_Pa),
             fmt::format("{:.0f}", press.assist_N), asked ? fmt::format("{:.0f}", press.assistAsked_N) : "–",
             asked ? fmt::format("{:.0f}", 100 * press.assist_N / press.assistAsked_N) : "–"});
    }
    return textTable(table);
}

std::string motorsText(const Circuit& circuit, const DriveSummary& summary) {
    SheetTable table{
        "Motors", {"Part", "Starts", "Running s", "Highest current A"}, {false, true, true, true}, {}};
    for (const MotorSummary& motor : summary.motors) {
        table.rows.push_back({partName(circuit, motor.part), fmt::format("{}", motor.starts),
                              seconds(motor.running_s), fmt::format("{:.2f}", motor.highest_A)});
    }
    return textTable(table);
}

std::string contactsText(const Circuit& circuit, const DriveSummary& summary) {
    SheetTable table{"Contacts",
                     {"Part", "Contact", "Closings", "Closed s", "Most closings in 1 s"},
                     {false, false, true, true, true},
                     {}};
    for (const ContactSummary& contact : summary.contacts) {
        table.rows.push_back({partName(circuit, contact.part),
                              contact.contact.empty() ? "–" : contact.contact,
                              fmt::format("{}", contact.closings), seconds(contact.closed_s),
                              fmt::format("{}", contact.mostClosingsInOneSecond)});
    }
    return textTable(table);
}

std::string balancesText(const Balances& balances) {
    SheetTable table{"Balances: what came in, went out and is held more than at the start",
                     {"Of", "In", "Out", "Held", "Off by"},
                     {false, true, true, true, true},
                     {}};
    const auto add = [&](std::string_view name, const Balance& balance, double unit) {
        table.rows.push_back({std::string(name), fmt::format("{:.4g}", balance.in / unit),
                              fmt::format("{:.4g}", balance.out / unit),
                              fmt::format("{:.3g}", balance.held / unit),
                              fmt::format("{:.0e}", balance.offShare)});
    };
    add("energy, kJ", balances.energy_J, 1e3);
    add("air, g", balances.gas_kg, 1e-3);
    add("charge, C", balances.charge_C, 1);
    return textTable(table);
}

std::string subjectName(const Circuit& circuit, const DriveEvent& event) {
    if (event.subject == Subject::Wire) {
        const auto wire = circuit.wires.find(WireId{event.id});
        return wire == circuit.wires.end() ? event.id : wire->second.reference;
    }
    return partName(circuit, PartId{event.id});
}

std::string eventsText(const Circuit& circuit, const Recording& recording) {
    constexpr std::size_t kMost = 60;
    SheetTable table{"Events", {"At s", "Part", "What"}, {true, false, false}, {}};
    for (const DriveEvent& event : recording.events) {
        if (table.rows.size() == kMost) {
            break;
        }
        table.rows.push_back({fmt::format("{:.4f}", event.time_s), subjectName(circuit, event), event.what});
    }
    std::string text = textTable(table);
    if (recording.events.size() > kMost) {
        text += fmt::format("and {} more, which --json lists\n", recording.events.size() - kMost);
    }
    return text;
}

} // namespace

std::string driveText(const Circuit& circuit, const DriveResult& drive) {
    const DriveSummary summary = driveSummary(circuit, drive.recording);
    std::string text = fmt::format("Drive \"{}\": {:.6g} s of {:.6g} s simulated\n", circuit.plan.name,
                                   drive.recording.duration_s, circuit.plan.duration_s);
    for (const std::string& section : {vacuumText(circuit, summary), pressesText(circuit, summary),
                                       motorsText(circuit, summary), contactsText(circuit, summary),
                                       eventsText(circuit, drive.recording), balancesText(drive.balances)}) {
        text += "\n" + section;
    }
    return text;
}

} // namespace pumpwright
