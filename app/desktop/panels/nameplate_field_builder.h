#pragma once

#include "app/desktop/panels/nameplate_fields.h"

#include <QCoreApplication>

#include <concepts>

namespace pumpwright {

inline Change putChange(PartId id, Part part) {
    return putPart(std::move(id), std::move(part));
}
inline Change putChange(WireId id, Wire wire) {
    return putWire(std::move(id), std::move(wire));
}
inline Change putChange(HoseId id, Hose hose) {
    return putHose(std::move(id), std::move(hose));
}

inline const std::map<PartId, Part>& objectsOf(const Circuit& circuit, const PartId&) {
    return circuit.parts;
}
inline const std::map<WireId, Wire>& objectsOf(const Circuit& circuit, const WireId&) {
    return circuit.wires;
}
inline const std::map<HoseId, Hose>& objectsOf(const Circuit& circuit, const HoseId&) {
    return circuit.hoses;
}

/// Builds the fields that edit the same thing in several objects of one sort.
template <class IdType, class Object>
class NameplateFieldBuilder {
public:
    using Read = std::function<FieldValue(const Object&)>;
    using Write = std::function<void(Object&, const FieldValue&)>;

    NameplateFieldBuilder(const Circuit& circuit, std::vector<IdType> ids)
        : m_circuit(circuit), m_ids(std::move(ids)) {}

    void addQuantity(const QString& key, const QString& label, const QuantityRange& range,
                     std::function<double(const Object&)> read, std::function<void(Object&, double)> write) {
        NameplateField field = newField(
            key, label, [read](const Object& object) { return FieldValue(read(object)); },
            [write](Object& object, const FieldValue& value) { write(object, std::get<double>(value)); });
        field.sort = NameplateField::Sort::Quantity;
        field.range = range;
        m_fields.push_back(std::move(field));
    }

    void addChoice(const QString& key, const QString& label, std::vector<NameplateField::Option> options,
                   std::function<QString(const Object&)> read,
                   std::function<void(Object&, const QString&)> write) {
        addText(key, label, std::move(read), std::move(write));
        m_fields.back().sort = NameplateField::Sort::Choice;
        m_fields.back().options = std::move(options);
    }

    void addText(const QString& key, const QString& label, std::function<QString(const Object&)> read,
                 std::function<void(Object&, const QString&)> write) {
        m_fields.push_back(newField(
            key, label, [read](const Object& object) { return FieldValue(read(object)); },
            [write](Object& object, const FieldValue& value) { write(object, std::get<QString>(value)); }));
    }

    NameplateField& last() { return m_fields.back(); }
    std::vector<NameplateField> take() { return std::move(m_fields); }

private:
    NameplateField newField(const QString& key, const QString& label, const Read& read,
                            const Write& write) const {
        NameplateField field;
        field.key = key;
        field.label = label;
        field.value = commonValue(read);
        field.edit = [ids = m_ids, label, write](const Circuit& circuit, const FieldValue& value) {
            return editOf(circuit, ids, label, write, value);
        };
        return field;
    }

    std::optional<FieldValue> commonValue(const Read& read) const {
        std::optional<FieldValue> common;
        for (const IdType& id : m_ids) {
            const FieldValue value = read(objectsOf(m_circuit, id).at(id));
            if (common && *common != value) {
                return std::nullopt;
            }
            common = value;
        }
        return common;
    }

    static Edit editOf(const Circuit& circuit, const std::vector<IdType>& ids, const QString& label,
                       const Write& write, const FieldValue& value) {
        Edit edit;
        QString subject;
        for (const IdType& id : ids) {
            const auto& objects = objectsOf(circuit, id);
            const auto found = objects.find(id);
            if (found == objects.end()) {
                continue;
            }
            Object object = found->second;
            subject = shown(object.reference);
            write(object, value);
            edit.changes.push_back(putChange(id, std::move(object)));
        }
        if (const int count = static_cast<int>(edit.changes.size()); count > 1) {
            subject = QCoreApplication::translate("pumpwright", "%n objects", nullptr, count);
        }
        edit.name = QCoreApplication::translate("pumpwright", "Set %1 of %2")
                        .arg(label.toLower(), subject)
                        .toStdString();
        return edit;
    }

    const Circuit& m_circuit;
    std::vector<IdType> m_ids;
    std::vector<NameplateField> m_fields;
};

} // namespace pumpwright
