#include "core/units/unit_table_p.h"

#include <algorithm>
#include <array>

namespace pumpwright {
namespace {

/// Another way to write a unit, as folded() leaves it. It may stand for units of several kinds: the kind
/// asked for decides.
struct Spelling {
    std::string_view text;
    std::string_view symbol;
};

constexpr auto kSpellings = std::to_array<Spelling>({
    {"percent", "%"},     {"volt", "V"},         {"volts", "V"},
    {"amp", "A"},         {"amps", "A"},         {"ampere", "A"},
    {"amperes", "A"},     {"ohm", "Ω"},          {"ohms", "Ω"},
    {"R", "Ω"},           {"mohm", "mΩ"},        {"kohm", "kΩ"},
    {"k", "kΩ"},          {"Mohm", "MΩ"},        {"M", "MΩ"},
    {"p", "pF"},          {"n", "nF"},           {"u", "µF"},
    {"farad", "F"},       {"henry", "H"},        {"watt", "W"},
    {"watts", "W"},       {"joule", "J"},        {"joules", "J"},
    {"W·s", "Ws"},        {"W·h", "Wh"},         {"kW·h", "kWh"},
    {"A·h", "Ah"},        {"A h", "Ah"},         {"mA·h", "mAh"},
    {"A·s", "As"},        {"sec", "s"},          {"second", "s"},
    {"seconds", "s"},     {"msec", "ms"},        {"minute", "min"},
    {"minutes", "min"},   {"hr", "h"},           {"hour", "h"},
    {"hours", "h"},       {"C", "°C"},           {"degC", "°C"},
    {"deg C", "°C"},      {"F", "°F"},           {"degF", "°F"},
    {"deg F", "°F"},      {"kelvin", "K"},       {"in Hg", "inHg"},
    {"in. Hg", "inHg"},   {"mm Hg", "mmHg"},     {"lbf/in2", "psi"},
    {"psia", "psi"},      {"meter", "m"},        {"metre", "m"},
    {"meters", "m"},      {"metres", "m"},       {"foot", "ft"},
    {"feet", "ft"},       {"inch", "in"},        {"inches", "in"},
    {"″", "in"},          {"sq mm", "mm²"},      {"sqmm", "mm²"},
    {"sq cm", "cm²"},     {"sq in", "in²"},      {"liter", "L"},
    {"litre", "L"},       {"liters", "L"},       {"litres", "L"},
    {"cc", "cm³"},        {"ccm", "cm³"},        {"cu in", "in³"},
    {"l/min", "L/min"},   {"lpm", "L/min"},      {"cfm", "ft³/min"},
    {"newton", "N"},      {"newtons", "N"},      {"lb", "lbf"},
    {"lbs", "lb"},        {"lbs", "lbf"},        {"Nm", "N·m"},
    {"N m", "N·m"},       {"N.m", "N·m"},        {"mNm", "mN·m"},
    {"lb·ft", "lbf·ft"},  {"lb-ft", "lbf·ft"},   {"ft·lbf", "lbf·ft"},
    {"ft-lb", "lbf·ft"},  {"lb·in", "lbf·in"},   {"lb-in", "lbf·in"},
    {"in·lbf", "lbf·in"}, {"r/min", "rpm"},      {"1/min", "rpm"},
    {"rev/min", "rpm"},   {"kgm2", "kg·m²"},     {"kgcm2", "kg·cm²"},
    {"gcm2", "g·cm²"},    {"Vs/rad", "V·s/rad"}, {"Nm/A", "N·m/A"},
    {"mNm/A", "mN·m/A"},  {"°C/W", "K/W"},       {"J/°C", "J/K"},
});

struct Fold {
    std::string_view from;
    std::string_view to;
};

// Characters that look or mean the same: both micro signs, both ohm signs, degree and ordinal, raised
// figures.
constexpr auto kFolds = std::to_array<Fold>({
    {"µ", "u"},
    {"μ", "u"},
    {"\u2126", "Ω"},
    {"º", "°"},
    {"²", "2"},
    {"³", "3"},
    {"^", ""},
    {"⋅", "·"},
    {"*", "·"},
    {"\"", "″"},
});

std::string folded(std::string_view text) {
    std::string result;
    while (!text.empty()) {
        const auto* fold =
            std::ranges::find_if(kFolds, [&](const Fold& f) { return text.starts_with(f.from); });
        const bool found = fold != kFolds.end();
        result += found ? fold->to : text.substr(0, 1);
        text.remove_prefix(found ? fold->from.size() : 1);
    }
    return result;
}

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

/// Equal but for letter case, save that a leading m (milli) never is a leading M (mega).
bool equalButForCase(std::string_view a, std::string_view b) {
    const bool prefixDiffers = !a.empty() && !b.empty() && a[0] != b[0] && lower(a[0]) == 'm';
    return !prefixDiffers && std::ranges::equal(a, b, [](char x, char y) { return lower(x) == lower(y); });
}

/// The unit that a text names, letters compared by `same`: by symbol first, then by another spelling.
template <class Same>
const DisplayUnit* unitBy(std::span<const DisplayUnit> units, std::string_view text, Same same) {
    for (const DisplayUnit& unit : units) {
        if (!unit.symbol.empty() && same(folded(unit.symbol), text)) {
            return &unit;
        }
    }
    for (const Spelling& spelling : kSpellings) {
        if (same(spelling.text, text)) {
            const auto unit = std::ranges::find(units, spelling.symbol, &DisplayUnit::symbol);
            if (unit != units.end()) {
                return &*unit;
            }
        }
    }
    return nullptr;
}

} // namespace

const DisplayUnit* unitNamed(QuantityKind kind, std::string_view text) {
    const std::string wanted = folded(text);
    const auto units = displayUnits(kind);
    const auto exactly = [](std::string_view a, std::string_view b) { return a == b; };
    const DisplayUnit* exact = unitBy(units, wanted, exactly);
    return exact != nullptr ? exact : unitBy(units, wanted, equalButForCase);
}

} // namespace pumpwright
