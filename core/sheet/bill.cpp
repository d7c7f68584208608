#include "core/sheet/bill.h"

#include "core/parts/part_kind.h"
#include "core/sheet/cells.h"
#include "core/sheet/making_up.h"
#include "core/sheet/ratings.h"
#include "core/sheet/references.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <tuple>

namespace pumpwright {
namespace {

/// What makes two things one line: description, ratings, price of one unit (0: not entered).
using LineKey = std::tuple<std::string, std::string, double>;
using Lines = std::map<LineKey, BillLine>;

void addTo(Lines& lines, const LineKey& key, double quantity, std::string_view unit,
           const std::string& reference) {
    BillLine& line = lines[key];
    std::tie(line.description, line.ratings, std::ignore) = key;
    const double price = std::get<double>(key);
    line.price = price > 0 ? std::optional<double>(price) : std::nullopt;
    line.unit = unit;
    line.quantity += quantity;
    line.references.push_back(reference);
}

Lines partLines(const Circuit& circuit, const PriceList& prices) {
    Lines lines;
    for (const auto& [id, part] : circuit.parts) {
        const auto title = prices.titles.find(part.catalogue);
        const std::string description =
            title == prices.titles.end() ? std::string(kindOf(part).title()) : title->second;
        addTo(lines, {description, ratingsText(part), part.price}, 1, "pc", part.reference);
    }
    return lines;
}

Lines wireLines(const Circuit& circuit) {
    Lines lines;
    for (const auto& [id, wire] : circuit.wires) {
        const std::string ratings =
            fmt::format("{} {}, {}", formatQuantity(wire.area_m2, QuantityKind::WireArea, "mm²"), wire.colour,
                        wire.insulation);
        addTo(lines, {"Wire", ratings, wire.price_perMetre}, cutLength_m(wire), "m", wire.reference);
    }
    return lines;
}

Lines hoseLines(const Circuit& circuit) {
    Lines lines;
    for (const auto& [id, hose] : circuit.hoses) {
        const std::string ratings =
            fmt::format("inside {}", formatQuantity(hose.innerDiameter_m, QuantityKind::Length, "mm"));
        addTo(lines, {"Vacuum hose", ratings, hose.price_perMetre}, hose.length_m, "m", hose.reference);
    }
    return lines;
}

/// Barrels and sleeves, with the wires they go on; a sleeve goes over every barrel.
Lines crimpLines(const Circuit& circuit, const PriceList& prices) {
    const double known = circuit.currency == prices.currency ? 1 : 0;
    Lines lines;
    for (const Crimp& crimp : crimpsOf(circuit)) {
        std::vector<std::string> wires;
        for (const WireId& id : crimp.wires) {
            wires.push_back(circuit.wires.at(id).reference);
        }
        const std::string on = joinedReferences(std::move(wires));
        const double price = isLarge(crimp) ? prices.largeCrimp : prices.smallCrimp;
        addTo(lines, {"Crimp terminal", crimpOrder(crimp), known * price}, 1, "pc", on);
        addTo(lines, {"Heat-shrink sleeve, lined, 2:1", sleeveOrder(crimp), known * prices.sleeve}, 1, "pc",
              on);
    }
    return lines;
}

/// To hundredths. An amount that is half a hundredth on paper (0.5 m at 3.15) may be stored a hair below: the
/// hair is added back, so that it goes up as on paper.
double roundedSum(double amount) {
    constexpr double kHair = 1e-9;
    return std::round(amount * 100.0 * (1.0 + kHair)) / 100.0;
}

void append(Bill& bill, Lines lines) {
    const auto firstNew = static_cast<std::ptrdiff_t>(bill.lines.size());
    for (auto& [key, line] : lines) {
        std::ranges::sort(line.references, referenceBefore);
        // clang 14 cannot compile std::ranges::unique of libstdc++ 12
        line.references.erase(std::unique(line.references.begin(), line.references.end()),
                              line.references.end());
        line.sum = roundedSum(line.price.value_or(0) * line.quantity);
        bill.total += line.sum;
        bill.unpriced += line.price ? 0 : 1;
        bill.lines.push_back(std::move(line));
    }
    std::stable_sort(bill.lines.begin() + firstNew, bill.lines.end(), [](const auto& a, const auto& b) {
        return referenceBefore(a.references.front(), b.references.front());
    });
}

} // namespace

Bill billOf(const Circuit& circuit, const PriceList& prices) {
    Bill bill;
    append(bill, partLines(circuit, prices));
    append(bill, wireLines(circuit));
    append(bill, hoseLines(circuit));
    append(bill, crimpLines(circuit, prices));
    return bill;
}

} // namespace pumpwright
