#include "app/desktop/panels/applied_remedy.h"

#include "app/desktop/shown_text.h"

namespace pumpwright {
namespace {

void keepDrawing(const Part& drawn, Part& part) {
    part.at = drawn.at;
    part.quarterTurns = drawn.quarterTurns;
    part.mirrored = drawn.mirrored;
    part.labelFrom = drawn.labelFrom;
}

template <class Connection>
void keepDrawing(const Connection& drawn, Connection& connection) {
    if (connection.from == drawn.from && connection.to == drawn.to) {
        connection.bends = drawn.bends;
        connection.labelFrom = drawn.labelFrom;
    }
}

template <class IdType, class Object>
void keepDrawing(const std::map<IdType, Object>& objects, Put<IdType, Object>& put) {
    const auto drawn = objects.find(put.id);
    if (put.object && drawn != objects.end()) {
        Object object = *put.object;
        keepDrawing(drawn->second, object);
        put.object = std::make_shared<const Object>(std::move(object));
    }
}

} // namespace

Edit remedyAsDrawn(const Circuit& circuit, Edit remedy) {
    for (Change& change : remedy.changes) {
        if (auto* part = std::get_if<Put<PartId, Part>>(&change)) {
            keepDrawing(circuit.parts, *part);
        } else if (auto* wire = std::get_if<Put<WireId, Wire>>(&change)) {
            keepDrawing(circuit.wires, *wire);
        } else if (auto* hose = std::get_if<Put<HoseId, Hose>>(&change)) {
            keepDrawing(circuit.hoses, *hose);
        }
    }
    return remedy;
}

std::string stepName(const Remedy& remedy) {
    QString spoken = translated(remedy.text);
    if (spoken == shown(remedy.text.english())) {
        return remedy.edit->name;
    }
    if (spoken.endsWith(QLatin1Char('.'))) {
        spoken.chop(1);
    }
    return spoken.toStdString();
}

} // namespace pumpwright
