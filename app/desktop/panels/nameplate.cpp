#include "app/desktop/panels/nameplate.h"

#include "app/desktop/panels/quantity_field.h"
#include "app/desktop/panels/text_field.h"
#include "app/desktop/preferences.h"

#include <QFormLayout>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace pumpwright {
namespace {

/// A field is never narrower, however long the labels are.
constexpr int kFieldWidth_letters = 14;

QLabel* newLabel(QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

} // namespace

Nameplate::Nameplate(Document& document, Selection& selection, const Preferences& preferences,
                     QWidget* parent)
    : QWidget(parent), m_document(document), m_selection(selection), m_preferences(preferences),
      m_heading(newLabel(this)), m_detail(newLabel(this)), m_formHolder(new QWidget(this)) {
    QFont bold = m_heading->font();
    bold.setBold(true);
    m_heading->setFont(bold);
    m_heading->setObjectName(QStringLiteral("nameplateHeading"));

    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus); // it follows the focus of what it holds
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setAccessibleName(tr("Nameplate fields"));
    auto* column = new QVBoxLayout(m_formHolder);
    column->setContentsMargins(8, 8, 8, 8);
    column->addWidget(m_heading);
    column->addWidget(m_detail);
    column->addStretch(1);
    scroll->setWidget(m_formHolder);

    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->addWidget(scroll);

    connect(&document, &Document::changed, this, &Nameplate::refresh);
    connect(&selection, &Selection::changed, this, &Nameplate::refresh);
    connect(&preferences, &Preferences::changed, this, [this] {
        for (const Row& row : m_rows) {
            if (row.quantity) {
                row.quantity->setUnits(m_preferences.units());
            }
        }
    });
    refresh();
}

QWidget* Nameplate::field(const QString& key) const {
    const auto row =
        std::find_if(m_rows.begin(), m_rows.end(), [&](const Row& one) { return one.key == key; });
    if (row == m_rows.end()) {
        return nullptr;
    }
    return row->quantity ? static_cast<QWidget*>(row->quantity) : row->text;
}

void Nameplate::beginEditing() {
    if (!m_rows.empty()) {
        field(m_rows.front().key)->setFocus(Qt::ShortcutFocusReason);
    }
}

void Nameplate::refresh() {
    NameplateContent content = nameplateContent(m_document.circuit(), m_selection.objects());
    const bool same = m_shown == m_selection.objects() && showsSameFields(content);
    m_shown = m_selection.objects();
    m_heading->setText(content.heading);
    m_detail->setText(content.detail);
    m_detail->setVisible(!content.detail.isEmpty());
    if (!same) {
        rebuild(content);
    }
    m_content = std::move(content);
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        refreshRow(m_rows[i], m_content.fields[i]);
    }
}

bool Nameplate::showsSameFields(const NameplateContent& content) const {
    return std::equal(m_content.fields.begin(), m_content.fields.end(), content.fields.begin(),
                      content.fields.end(), [](const NameplateField& one, const NameplateField& other) {
                          return one.key == other.key && one.sort == other.sort && one.label == other.label &&
                                 one.options == other.options;
                      });
}

void Nameplate::rebuild(const NameplateContent& content) {
    m_rows.clear();
    // The old form may be the sender of the signal that led here.
    if (m_form) {
        m_form->hide();
        m_form->deleteLater();
    }
    m_form = new QWidget(m_formHolder);
    m_formLayout = new QFormLayout(m_form);
    m_formLayout->setContentsMargins(0, 4, 0, 0);
    m_formLayout->setRowWrapPolicy(QFormLayout::WrapLongRows);
    m_formLayout->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    for (const NameplateField& field : content.fields) {
        addRow(field);
    }
    static_cast<QVBoxLayout*>(m_formHolder->layout())->insertWidget(2, m_form);
}

void Nameplate::addRow(const NameplateField& field) {
    Row row{field.key};
    const QString key = field.key;
    QWidget* widget = nullptr;
    if (field.sort == NameplateField::Sort::Quantity) {
        row.quantity = new QuantityField(field.label, field.range, m_preferences.units(), m_form);
        connect(row.quantity, &QuantityField::edited, this, [this, key](double si) { apply(key, si); });
        connect(row.quantity, &QuantityField::finished, this, [this] { ++m_typing; });
        widget = row.quantity;
    } else {
        row.text = new TextField(field, m_form);
        connect(row.text, &TextField::edited, this, [this, key](const QString& text) { apply(key, text); });
        connect(row.text, &TextField::finished, this, [this] { ++m_typing; });
        widget = row.text;
    }
    widget->setMinimumWidth(kFieldWidth_letters * fontMetrics().averageCharWidth());
    auto* label = newLabel(m_form);
    label->setText(field.label);
    label->setBuddy(widget);
    m_formLayout->addRow(label, widget);
    m_rows.push_back(row);
}

void Nameplate::refreshRow(const Row& row, const NameplateField& field) {
    if (row.quantity) {
        row.quantity->showValue(field.value ? std::optional(std::get<double>(*field.value)) : std::nullopt);
    } else {
        row.text->showField(field);
    }
}

void Nameplate::apply(const QString& key, const FieldValue& value) {
    const auto field = std::find_if(m_content.fields.begin(), m_content.fields.end(),
                                    [&](const NameplateField& one) { return one.key == key; });
    if (field == m_content.fields.end()) {
        return;
    }
    // The number of the stay keeps a later visit to the same field a step of its own.
    m_document.applyMerging(field->edit(m_document.circuit(), value),
                            QStringLiteral("nameplate/%1/%2").arg(key).arg(m_typing));
}

} // namespace pumpwright
