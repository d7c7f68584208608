#pragma once

#include "app/desktop/document/document.h"
#include "app/desktop/panels/nameplate_fields.h"

#include <QWidget>

class QFormLayout;
class QLabel;

namespace pumpwright {

class Preferences;
class QuantityField;
class TextField;

/// Values of what is selected, as on a rating plate.
class Nameplate final : public QWidget {
    Q_OBJECT

public:
    Nameplate(Document& document, Selection& selection, const Preferences& preferences,
              QWidget* parent = nullptr);

    /// The field of a key ("coilResistance_ohm", "area_m2"), or nullptr: for keyboard access and tests.
    QWidget* field(const QString& key) const;
    /// Puts the keyboard into the first field.
    void beginEditing();

private:
    struct Row {
        QString key;
        QuantityField* quantity = nullptr;
        TextField* text = nullptr;
    };

    void refresh();
    bool showsSameFields(const NameplateContent& content) const;
    void rebuild(const NameplateContent& content);
    void addRow(const NameplateField& field);
    void refreshRow(const Row& row, const NameplateField& field);
    void apply(const QString& key, const FieldValue& value);

    Document& m_document;
    Selection& m_selection;
    const Preferences& m_preferences;
    NameplateContent m_content;
    SelectedObjects m_shown;
    std::vector<Row> m_rows;
    int m_typing = 0; ///< counts stays in a field: edits of one stay merge into one step
    QLabel* m_heading;
    QLabel* m_detail;
    QWidget* m_form = nullptr;
    QFormLayout* m_formLayout = nullptr;
    QWidget* m_formHolder;
};

} // namespace pumpwright
