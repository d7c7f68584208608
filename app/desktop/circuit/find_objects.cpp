#include "app/desktop/circuit/find_objects.h"

#include "app/desktop/panels/quantity_text.h"
#include "core/parts/part_kind.h"
#include "core/units/quantity_kind.h"

#include <QStringList>

#include <algorithm>

namespace pumpwright {
namespace {

/// An object with the texts that it is found by, its reference first.
struct Candidate {
    SelectedObjects object;
    QStringList texts;
};

QString quantity(double si, QuantityKind kind) {
    return shown(formatQuantity(si, kind));
}

Candidate candidate(const PartId& id, const Part& part) {
    const PartKind& kind = kindOf(part);
    QStringList texts{shown(part.reference), shown(part.label), translatedWords(kind.title())};
    for (const ParameterSpec& parameter : kind.parameters()) {
        texts << quantity(kind.value(part, parameter.key), parameter.kind);
    }
    return {{{id}, {}, {}}, texts};
}

Candidate candidate(const WireId& id, const Wire& wire) {
    return {{{}, {id}, {}},
            {shown(wire.reference), shown(wire.colour), quantity(wire.area_m2, QuantityKind::Area),
             quantity(wire.length_m, QuantityKind::Length)}};
}

Candidate candidate(const HoseId& id, const Hose& hose) {
    return {{{}, {}, {id}},
            {shown(hose.reference), quantity(hose.innerDiameter_m, QuantityKind::Length),
             quantity(hose.length_m, QuantityKind::Length)}};
}

} // namespace

std::vector<SelectedObjects> findObjects(const Circuit& circuit, const QString& text) {
    const QString searched = text.simplified();
    std::vector<SelectedObjects> found;
    if (searched.isEmpty()) {
        return found;
    }
    std::size_t exact = 0;
    const auto look = [&](const auto& objects) {
        for (const auto& [id, object] : objects) {
            const Candidate one = candidate(id, object);
            if (one.texts.front().compare(searched, Qt::CaseInsensitive) == 0) {
                found.insert(found.begin() + static_cast<std::ptrdiff_t>(exact++), one.object);
            } else if (std::any_of(one.texts.begin(), one.texts.end(), [&](const QString& has) {
                           return has.contains(searched, Qt::CaseInsensitive);
                       })) {
                found.push_back(one.object);
            }
        }
    };
    look(circuit.parts);
    look(circuit.wires);
    look(circuit.hoses);
    return found;
}

} // namespace pumpwright
