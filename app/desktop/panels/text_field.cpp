#include "app/desktop/panels/text_field.h"

#include <QComboBox>
#include <QIcon>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QVBoxLayout>

namespace pumpwright {
namespace {

constexpr QSize kSwatchSize{24, 12};

QString valueText(const NameplateField& field) {
    return field.value ? std::get<QString>(*field.value) : QString();
}

/// A piece of wire in its colours, edged so that it shows on any ground.
QIcon swatch(const std::vector<QColor>& colours) {
    if (colours.empty()) {
        return {};
    }
    QPixmap pixmap(kSwatchSize);
    pixmap.fill(colours.front());
    QPainter painter(&pixmap);
    const QRect all = pixmap.rect();
    if (colours.size() > 1) {
        painter.fillRect(all.adjusted(0, all.height() / 2, 0, 0), colours[1]);
    }
    painter.setPen(Qt::gray);
    painter.drawRect(all.adjusted(0, 0, -1, -1));
    return QIcon(pixmap);
}

} // namespace

TextField::TextField(const NameplateField& field, QWidget* parent)
    : QWidget(parent), m_field(field), m_message(new QLabel(this)) {
    m_message->setTextFormat(Qt::PlainText);
    m_message->setWordWrap(true);
    m_message->setVisible(false);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    if (field.sort == NameplateField::Sort::Choice) {
        buildChoices(field);
        column->addWidget(m_choices);
    } else {
        buildEditor(field);
        column->addWidget(m_editor);
    }
    column->addWidget(m_message);
    showField(field);
}

void TextField::buildEditor(const NameplateField& field) {
    m_editor = new QLineEdit(this);
    m_editor->setAccessibleName(field.label);
    m_editor->setMinimumHeight(24);
    setFocusProxy(m_editor);
    connect(m_editor, &QLineEdit::textEdited, this, &TextField::offer);
    connect(m_editor, &QLineEdit::editingFinished, this, &TextField::finishTyping);
}

void TextField::buildChoices(const NameplateField& field) {
    m_choices = new QComboBox(this);
    m_choices->setAccessibleName(field.label);
    m_choices->setMinimumHeight(24);
    m_choices->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_choices->setMinimumContentsLength(5);
    m_choices->setIconSize(kSwatchSize);
    for (const NameplateField::Option& option : field.options) {
        m_choices->addItem(swatch(option.colours), option.label, option.id);
    }
    setFocusProxy(m_choices);
    connect(m_choices, &QComboBox::activated, this, [this](int index) {
        const QVariant id = m_choices->itemData(index);
        if (id.isValid()) {
            offer(id.toString());
            Q_EMIT finished();
        }
    });
    if (field.open) {
        m_choices->setEditable(true);
        m_choices->setInsertPolicy(QComboBox::NoInsert);
        m_choices->setCompleter(nullptr);
        m_choices->lineEdit()->setAccessibleName(field.label);
        connect(m_choices->lineEdit(), &QLineEdit::editingFinished, this, &TextField::finishTyping);
    }
}

void TextField::showField(const NameplateField& field) {
    const bool changed = m_field.value != field.value;
    m_field = field;
    showMessage(field.warning);
    if (m_editor) {
        const bool typing = m_editor->hasFocus() && m_editor->isModified();
        // A stored text is trimmed: blanks at the end of what is being typed must stay.
        if (!typing || (changed && m_editor->text().trimmed() != valueText(field))) {
            m_editor->setText(valueText(field));
            m_editor->setCursorPosition(0);
            m_editor->setModified(false);
        }
        m_editor->setPlaceholderText(field.value ? QString() : tr("several values"));
        return;
    }
    const int index = field.value ? m_choices->findData(valueText(field)) : -1;
    m_choices->setCurrentIndex(index);
    m_choices->setPlaceholderText(tr("several values"));
    if (field.open) {
        m_choices->lineEdit()->setPlaceholderText(tr("several values"));
    }
    if (field.open && index < 0) {
        m_choices->setEditText(valueText(field));
    }
}

void TextField::offer(const QString& text) {
    const QString refusal = m_field.refusal ? m_field.refusal(text) : QString();
    if (!refusal.isEmpty()) {
        showMessage(refusal);
        return;
    }
    showMessage({});
    Q_EMIT edited(text);
}

void TextField::finishTyping() {
    if (m_editor) {
        if (m_editor->isModified()) {
            m_editor->setModified(false);
            m_editor->setText(valueText(m_field));
            Q_EMIT finished();
        }
        return;
    }
    const QString typed = m_choices->currentText().trimmed();
    const bool isOption = m_choices->findText(typed) >= 0;
    if (isOption || typed == valueText(m_field)) {
        return;
    }
    const QString refusal = m_field.refusal ? m_field.refusal(typed.toUpper()) : QString();
    if (refusal.isEmpty()) {
        offer(typed.toUpper());
        Q_EMIT finished();
        return;
    }
    const QString kept = valueText(m_field);
    showField(m_field);
    showMessage(kept.isEmpty() ? refusal : tr("%1 Still %2.").arg(refusal, kept));
}

QString TextField::message() const {
    return m_message->text();
}

void TextField::showMessage(const QString& text) {
    m_message->setText(text);
    m_message->setVisible(!text.isEmpty());
}

} // namespace pumpwright
