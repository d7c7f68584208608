#include "app/desktop/panels/nameplate_fields.h"

#include "core/parts/part_kind.h"

#include <QCoreApplication>

namespace pumpwright {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("pumpwright", text);
}

template <class IdType, class Object>
std::vector<IdType> idsInCircuit(const std::set<IdType>& selected, const std::map<IdType, Object>& objects) {
    std::vector<IdType> ids;
    for (const IdType& id : selected) {
        if (objects.count(id) != 0) {
            ids.push_back(id);
        }
    }
    return ids;
}

QString endText(const Circuit& circuit, const End& end) {
    const auto part = circuit.parts.find(end.part);
    const std::string reference = part == circuit.parts.end() ? end.part.text : part->second.reference;
    return shown(reference) + QLatin1Char(' ') + shown(end.terminal);
}

template <class Connection>
QString routeText(const Circuit& circuit, const Connection& connection) {
    return QCoreApplication::translate("pumpwright", "from %1 to %2")
        .arg(endText(circuit, connection.from), endText(circuit, connection.to));
}

/// The one kind of all the parts, or nullptr.
const PartKind* commonKind(const Circuit& circuit, const std::vector<PartId>& parts) {
    const PartKind* common = nullptr;
    for (const PartId& id : parts) {
        const PartKind* kind = findPartKind(circuit.parts.at(id).kind);
        if (!kind || (common && common != kind)) {
            return nullptr;
        }
        common = kind;
    }
    return common;
}

NameplateContent partsContent(const Circuit& circuit, const std::vector<PartId>& parts) {
    NameplateContent content;
    const PartKind* kind = commonKind(circuit, parts);
    if (!kind) {
        content.heading = tr("%1 parts of different kinds").arg(parts.size());
        content.detail = tr("Select parts of one kind to edit them together.");
        return content;
    }
    const Part& first = circuit.parts.at(parts.front());
    const QString title = translatedWords(kind->title());
    content.heading = parts.size() == 1 ? shown(first.reference) + QLatin1Char(' ') + title
                                        : tr("%1 parts: %2").arg(parts.size()).arg(title);
    content.fields = partFields(circuit, parts);
    return content;
}

NameplateContent wiresContent(const Circuit& circuit, const std::vector<WireId>& wires) {
    NameplateContent content;
    const Wire& first = circuit.wires.at(wires.front());
    const bool single = wires.size() == 1;
    content.heading = single ? tr("%1 Wire").arg(shown(first.reference)) : tr("%1 wires").arg(wires.size());
    content.detail = single ? routeText(circuit, first) : tr("A new value goes to all of them.");
    content.fields = wireFields(circuit, wires);
    return content;
}

NameplateContent hosesContent(const Circuit& circuit, const std::vector<HoseId>& hoses) {
    NameplateContent content;
    const Hose& first = circuit.hoses.at(hoses.front());
    const bool single = hoses.size() == 1;
    content.heading = single ? tr("%1 Hose").arg(shown(first.reference)) : tr("%1 hoses").arg(hoses.size());
    content.detail = single ? routeText(circuit, first) : tr("A new value goes to all of them.");
    content.fields = hoseFields(circuit, hoses);
    return content;
}

NameplateContent limitsContent(const Circuit& circuit) {
    return {tr("Limits of this circuit"),
            tr("Findings are told against these. Select a part, a wire or a hose to see and set its values."),
            limitFields(circuit)};
}

} // namespace

NameplateContent nameplateContent(const Circuit& circuit, const SelectedObjects& selected) {
    const auto parts = idsInCircuit(selected.parts, circuit.parts);
    const auto wires = idsInCircuit(selected.wires, circuit.wires);
    const auto hoses = idsInCircuit(selected.hoses, circuit.hoses);
    // Parts lead: a part selected together with its wires is what the builder has in mind.
    if (!parts.empty()) {
        return partsContent(circuit, parts);
    }
    if (!wires.empty() && !hoses.empty()) {
        return {tr("Wires and hoses"), tr("Select either wires or hoses to edit them together."), {}};
    }
    if (!wires.empty()) {
        return wiresContent(circuit, wires);
    }
    return hoses.empty() ? limitsContent(circuit) : hosesContent(circuit, hoses);
}

} // namespace pumpwright
