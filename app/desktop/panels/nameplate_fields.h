#pragma once

#include "app/desktop/document/selection.h"
#include "app/desktop/panels/quantity_text.h"
#include "core/circuit/circuit.h"

#include <QColor>
#include <QString>

#include <functional>
#include <optional>
#include <variant>
#include <vector>

namespace pumpwright {

/// What a field hands over: a quantity [SI], or a text or the id of a choice.
using FieldValue = std::variant<double, QString>;

/// One line of the Nameplate: what it shows of the selected objects, and the edit that a new value makes.
struct NameplateField {
    enum class Sort { Quantity, Choice, Text };
    struct Option {
        QString id;
        QString label;
        std::vector<QColor> colours = {}; ///< of an insulation: shown beside the label
        friend bool operator==(const Option&, const Option&) = default;
    };

    QString key; ///< stable while the same objects stay selected
    QString label;
    Sort sort = Sort::Text;
    QuantityRange range;             ///< of a quantity
    std::vector<Option> options;     ///< of a choice
    bool open = false;               ///< a choice that takes other texts than its options
    std::optional<FieldValue> value; ///< none where the selected objects differ
    QString warning;                 ///< about the value in force: it is taken all the same
    std::function<QString(const QString&)>
        refusal; ///< why a text is not taken, or an empty text; may be unset
    std::function<Edit(const Circuit&, const FieldValue&)> edit;
};

/// What the Nameplate shows for a selection.
struct NameplateContent {
    QString heading; ///< "K1 relay", "3 wires"
    QString detail;  ///< where it runs, how many terminals
    std::vector<NameplateField> fields;
};

/// The limits of the circuit where nothing is selected; no fields where objects of different sorts are.
NameplateContent nameplateContent(const Circuit& circuit, const SelectedObjects& selected);

/// The fields of parts of one kind, of wires, of hoses.
std::vector<NameplateField> partFields(const Circuit& circuit, const std::vector<PartId>& parts);
std::vector<NameplateField> wireFields(const Circuit& circuit, const std::vector<WireId>& wires);
std::vector<NameplateField> hoseFields(const Circuit& circuit, const std::vector<HoseId>& hoses);

/// What the project's own limits are: what the rules hold the circuit against.
std::vector<NameplateField> limitFields(const Circuit& circuit);

} // namespace pumpwright
