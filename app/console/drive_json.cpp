#include "app/console/drive_texts.h"
#include "core/files/circuit_file.h"
#include "core/files/json_text.h"
#include "core/study/drive_summary.h"

namespace pumpwright {
namespace {

/// The part's id and reference, then the rest.
Json withPart(const Circuit& circuit, const PartId& id, const Json& rest) {
    Json json{{"part", partJson(circuit, id)}};
    json.update(rest);
    return json;
}

Json vacuumJson(const Circuit& circuit, const DriveSummary& summary) {
    Json list = Json::array();
    for (const VacuumSummary& one : summary.vacuum) {
        list.push_back(withPart(circuit, one.part,
                                {{"port", one.port},
                                 {"lowest_Pa", one.lowest_Pa},
                                 {"highest_Pa", one.highest_Pa},
                                 {"atEnd_Pa", one.atEnd_Pa}}));
    }
    return list;
}

Json pressesJson(const Circuit& circuit, const DriveSummary& summary) {
    Json list = Json::array();
    for (const PressSummary& press : summary.presses) {
        list.push_back(withPart(circuit, press.booster,
                                {{"at_s", press.at_s},
                                 {"force_N", press.force_N},
                                 {"vacuumBefore_Pa", press.vacuumBefore_Pa},
                                 {"vacuumLowest_Pa", press.vacuumLowest_Pa},
                                 {"assist_N", press.assist_N},
                                 {"assistAsked_N", press.assistAsked_N}}));
    }
    return list;
}

Json motorsJson(const Circuit& circuit, const DriveSummary& summary) {
    Json list = Json::array();
    for (const MotorSummary& motor : summary.motors) {
        list.push_back(withPart(
            circuit, motor.part,
            {{"starts", motor.starts}, {"running_s", motor.running_s}, {"highest_A", motor.highest_A}}));
    }
    return list;
}

Json contactsJson(const Circuit& circuit, const DriveSummary& summary) {
    Json list = Json::array();
    for (const ContactSummary& contact : summary.contacts) {
        list.push_back(withPart(circuit, contact.part,
                                {{"contact", contact.contact},
                                 {"closings", contact.closings},
                                 {"closed_s", contact.closed_s},
                                 {"mostClosingsInOneSecond", contact.mostClosingsInOneSecond}}));
    }
    return list;
}

Json eventsJson(const Recording& recording) {
    Json list = Json::array();
    for (const DriveEvent& event : recording.events) {
        list.push_back({{"time_s", event.time_s},
                        {"sort", event.subject == Subject::Wire ? "wire" : "part"},
                        {"id", event.id},
                        {"what", event.what}});
    }
    return list;
}

Json balanceJson(const Balance& balance) {
    return {{"in", balance.in}, {"out", balance.out}, {"held", balance.held}, {"offShare", balance.offShare}};
}

Json balancesJson(const Balances& balances) {
    return {{"energy_J", balanceJson(balances.energy_J)},
            {"gas_kg", balanceJson(balances.gas_kg)},
            {"charge_C", balanceJson(balances.charge_C)}};
}

} // namespace

std::string_view statusName(DriveStatus status) {
    switch (status) {
    case DriveStatus::Finished:
        return "finished";
    case DriveStatus::Cancelled:
        return "cancelled";
    case DriveStatus::Stopped:
        break;
    }
    return "stopped";
}

std::string driveJson(const std::string& file, const Circuit& circuit, const DriveResult& drive) {
    const DriveSummary summary = driveSummary(circuit, drive.recording);
    return jsonText({{"file", file},
                     {"checkSum", circuitCheckSum(circuit)},
                     {"plan", circuit.plan.name},
                     {"status", statusName(drive.status)},
                     {"message", drive.message},
                     {"duration_s", drive.recording.duration_s},
                     {"balances", balancesJson(drive.balances)},
                     {"vacuum", vacuumJson(circuit, summary)},
                     {"presses", pressesJson(circuit, summary)},
                     {"motors", motorsJson(circuit, summary)},
                     {"contacts", contactsJson(circuit, summary)},
                     {"events", eventsJson(drive.recording)}});
}

} // namespace pumpwright
