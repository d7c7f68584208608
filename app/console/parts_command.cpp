#include "app/console/commands.h"
#include "app/console/error_text.h"
#include "app/console/price_list.h"
#include "app/console/text_table.h"
#include "core/files/circuit_file.h"
#include "core/files/json_text.h"
#include "core/sheet/bill.h"

namespace pumpwright {
namespace {

Json lineJson(const BillLine& line) {
    Json json{{"quantity", line.quantity},
              {"unit", line.unit},
              {"part", line.description},
              {"ratings", line.ratings},
              {"references", line.references},
              {"price", nullptr},
              {"sum", nullptr}};
    if (line.price) {
        json["price"] = *line.price;
        json["sum"] = line.sum;
    }
    return json;
}

std::string billJson(const Request& request, const Circuit& circuit, const PriceList& prices) {
    const Bill bill = billOf(circuit, prices);
    Json json{{"file", request.file}, {"checkSum", circuitCheckSum(circuit)}, {"currency", circuit.currency}};
    json["lines"] = Json::array();
    for (const BillLine& line : bill.lines) {
        json["lines"].push_back(lineJson(line));
    }
    json["total"] = bill.total;
    json["linesWithoutPrice"] = bill.unpriced;
    return jsonText(json);
}

} // namespace

Outcome partsCommand(const Request& request) {
    const Result<Circuit> circuit = readCircuit(request.file);
    if (!circuit) {
        return unreadable(circuit.error());
    }
    const Result<PriceList> prices = priceList();
    if (!prices) {
        return unreadable(prices.error());
    }
    if (request.form == OutputForm::Json) {
        return {ExitStatus::Fine, billJson(request, *circuit, *prices), ""};
    }
    const SheetTable table = wiringSheet(*circuit, {}, "", *prices).parts;
    return {ExitStatus::Fine, tableInForm(table, request.form), ""};
}

} // namespace pumpwright
