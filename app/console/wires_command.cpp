#include "app/console/commands.h"
#include "app/console/error_text.h"
#include "app/console/text_table.h"
#include "core/files/circuit_file.h"
#include "core/files/csv_text.h"
#include "core/files/json_text.h"
#include "core/nets/nets.h"
#include "core/sheet/protection.h"
#include "core/units/wire_size.h"

namespace pumpwright {
namespace {

Json fusesJson(const Circuit& circuit, const Protection& protection) {
    Json list = Json::array();
    for (const PartId& fuse : protection.fuses) {
        list.push_back(partJson(circuit, fuse));
    }
    return list;
}

Json wireJson(const Circuit& circuit, const WireId& id, const Wire& wire, const Protection& protection) {
    return {{"id", id.text},
            {"reference", wire.reference},
            {"from", endJson(circuit, wire.from)},
            {"to", endJson(circuit, wire.to)},
            {"colour", wire.colour},
            {"area_m2", wire.area_m2},
            {"nearestGauge", awgName(nearestAwg(wire.area_m2))},
            {"length_m", wire.length_m},
            {"insulation", wire.insulation},
            {"fuses", fusesJson(circuit, protection)},
            {"unfused", protection.unfused},
            {"ground", protection.returns}};
}

Json hoseJson(const Circuit& circuit, const HoseId& id, const Hose& hose) {
    return {{"id", id.text},
            {"reference", hose.reference},
            {"from", endJson(circuit, hose.from)},
            {"to", endJson(circuit, hose.to)},
            {"innerDiameter_m", hose.innerDiameter_m},
            {"length_m", hose.length_m}};
}

std::string connectionsJson(const Request& request, const Circuit& circuit) {
    const auto protection = wireProtection(circuit, findNets(circuit));
    Json json{{"file", request.file}, {"checkSum", circuitCheckSum(circuit)}};
    json["wires"] = Json::array();
    for (const auto& [id, wire] : circuit.wires) {
        json["wires"].push_back(wireJson(circuit, id, wire, protection.at(id)));
    }
    json["hoses"] = Json::array();
    for (const auto& [id, hose] : circuit.hoses) {
        json["hoses"].push_back(hoseJson(circuit, id, hose));
    }
    return jsonText(json);
}

/// A line has no room for terminals in columns of their own: "G1 supply, 30".
SheetTable withTerminalsJoined(SheetTable table) {
    constexpr std::size_t kTo = 4;
    constexpr std::size_t kFrom = 1;
    for (const std::size_t column : {kTo, kFrom}) {
        const auto after = static_cast<std::ptrdiff_t>(column + 1);
        for (auto& row : table.rows) {
            row[column] += ", " + row[column + 1];
            row.erase(row.begin() + after);
        }
        table.columns.erase(table.columns.begin() + after);
        table.numeric.erase(table.numeric.begin() + after);
    }
    return table;
}

} // namespace

Outcome wiresCommand(const Request& request) {
    const Result<Circuit> circuit = readCircuit(request.file);
    if (!circuit) {
        return unreadable(circuit.error());
    }
    if (request.form == OutputForm::Json) {
        return {ExitStatus::Fine, connectionsJson(request, *circuit), ""};
    }
    const WiringSheet sheet = wiringSheet(*circuit, {}, "");
    if (request.form == OutputForm::Csv) {
        return {ExitStatus::Fine, csvTable(sheet.wires), ""};
    }
    return {ExitStatus::Fine, textTable(withTerminalsJoined(sheet.wires)) + "\n" + textTable(sheet.hoses),
            ""};
}

} // namespace pumpwright
