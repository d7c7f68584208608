#include "core/sheet/cells.h"
#include "core/sheet/references.h"
#include "core/sheet/tables_p.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

std::string money(double amount) {
    return formatQuantity(amount, QuantityKind::Money);
}

std::vector<std::string> row(const BillLine& line) {
    const bool byLength = line.unit == "m";
    return {byLength ? fmt::format("{:.2f}", line.quantity) : fmt::format("{:.0f}", line.quantity),
            line.unit,
            line.description,
            line.ratings,
            joinedReferences(line.references),
            line.price ? money(*line.price) : kNothing,
            line.price ? money(line.sum) : kNothing};
}

std::string totalNote(const Bill& bill) {
    if (bill.unpriced == 0) {
        return "";
    }
    return fmt::format("without {} line{} that no price was entered for", bill.unpriced,
                       bill.unpriced == 1 ? "" : "s");
}

} // namespace

SheetTable partsList(const Circuit& circuit, const PriceList& prices) {
    const Bill bill = billOf(circuit, prices);
    SheetTable table{"Parts list",
                     {"Quantity", "Unit", "Part", "Ratings", "References", "Price " + circuit.currency,
                      "Sum " + circuit.currency},
                     {true, false, false, false, false, true, true},
                     {},
                     true};
    for (const BillLine& line : bill.lines) {
        table.rows.push_back(row(line));
    }
    table.rows.push_back({"", "", "Total", totalNote(bill), "", circuit.currency, money(bill.total)});
    return table;
}

} // namespace pumpwright
