#include "core/parts/part_kind.h"
#include "core/sheet/cells.h"
#include "core/sheet/references.h"
#include "core/sheet/tables_p.h"

#include <algorithm>

namespace pumpwright {
namespace {

void addSettings(SheetTable& table, const std::string& name, const Part& part, const PartKind& kind,
                 const std::vector<std::string>& keys) {
    for (const ChoiceSpec& choice : kind.choices()) {
        const std::string_view chosen = kind.choice(part, choice.key);
        const auto option = std::ranges::find(choice.options, chosen, &ChoiceSpec::Option::id);
        if (option != choice.options.end()) {
            table.rows.push_back({name, std::string(choice.label), std::string(option->label)});
        }
    }
    for (const ParameterSpec& parameter : kind.parameters()) {
        if (std::ranges::find(keys, parameter.key) != keys.end()) {
            table.rows.push_back({name, std::string(parameter.label),
                                  settingText(kind.value(part, parameter.key), parameter.kind)});
        }
    }
}

} // namespace

SheetTable setPointTable(const Circuit& circuit) {
    SheetTable table{"Set points", {"Part", "Setting", "Value"}, {false, false, false}, {}};
    std::vector<std::pair<std::string, PartId>> ordered;
    for (const auto& [id, part] : circuit.parts) {
        ordered.emplace_back(part.reference, id);
    }
    std::ranges::stable_sort(ordered,
                             [](const auto& a, const auto& b) { return referenceBefore(a.first, b.first); });
    for (const auto& [reference, id] : ordered) {
        const Part& part = circuit.parts.at(id);
        const PartKind& kind = kindOf(part);
        const std::vector<std::string> keys = kind.features(part).setPoints;
        if (!keys.empty()) {
            addSettings(table, partName(circuit, id), part, kind, keys);
        }
    }
    return table;
}

} // namespace pumpwright
