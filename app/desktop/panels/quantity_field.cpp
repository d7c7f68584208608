#include "app/desktop/panels/quantity_field.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QTimer>
#include <QVBoxLayout>

namespace pumpwright {
namespace {

constexpr int kPatience_ms = 700;

} // namespace

QuantityField::QuantityField(const QString& name, const QuantityRange& range, const ShownUnits& units,
                             QWidget* parent)
    : QWidget(parent), m_range(range), m_units(units), m_editor(new QLineEdit(this)),
      m_secondUnit(new QLabel(this)), m_message(new QLabel(this)), m_patience(new QTimer(this)) {
    m_editor->setAccessibleName(name);
    m_editor->setMinimumHeight(24);
    m_editor->installEventFilter(this);
    m_secondUnit->setTextFormat(Qt::PlainText);
    m_secondUnit->setVisible(false);
    m_message->setTextFormat(Qt::PlainText);
    m_message->setWordWrap(true);
    m_message->setVisible(false);
    m_patience->setSingleShot(true);
    m_patience->setInterval(kPatience_ms);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addWidget(m_editor);
    column->addWidget(m_secondUnit);
    column->addWidget(m_message);
    setFocusProxy(m_editor);
    setUnits(units);

    connect(m_editor, &QLineEdit::textEdited, this, &QuantityField::readText);
    connect(m_editor, &QLineEdit::editingFinished, this, &QuantityField::finish);
    connect(m_patience, &QTimer::timeout, this, [this] { showMessage(m_refusal); });
}

void QuantityField::setUnits(const ShownUnits& units) {
    m_units = units;
    m_editor->setToolTip(tr("Allowed: %1").arg(rangeText(m_range, m_units)));
    m_editor->setAccessibleDescription(m_editor->toolTip());
    rewriteText();
}

QString QuantityField::message() const {
    return m_message->text();
}

void QuantityField::showValue(std::optional<double> si) {
    if (m_typing && si == m_value) {
        return;
    }
    m_value = si;
    m_typing = false;
    rewriteText();
}

void QuantityField::rewriteText() {
    m_editor->setText(m_value ? quantityText(*m_value, m_range.kind, m_units) : QString());
    m_editor->setPlaceholderText(m_value ? QString() : tr("several values"));
    m_editor->setCursorPosition(0);
    m_refusal.clear();
    showSecondUnit();
}

void QuantityField::showSecondUnit() {
    const bool show = m_value && m_range.kind == QuantityKind::GaugeVacuum;
    m_secondUnit->setVisible(show);
    m_secondUnit->setText(
        show ? tr("= %1").arg(shown(formatQuantity(*m_value, m_range.kind, m_units.secondVacuum)))
             : QString());
}

void QuantityField::readText() {
    if (!m_typing) {
        m_typing = true;
        m_before = m_value;
    }
    const auto value = quantityWithin(m_editor->text(), m_range, m_units);
    if (!value) {
        m_refusal = shown(value.error().text);
        m_held.reset();
        m_patience->start();
        return;
    }
    m_patience->stop();
    m_refusal.clear();
    showMessage({});
    if (m_before) {
        report(*value);
    } else {
        m_held = *value;
    }
}

void QuantityField::report(double si) {
    m_value = si;
    showSecondUnit();
    Q_EMIT edited(si);
}

void QuantityField::finish() {
    m_patience->stop();
    if (!m_typing) {
        return;
    }
    const QString refusal = m_refusal;
    if (!refusal.isEmpty()) {
        takeBack();
        showMessage(m_value ? tr("%1 Still %2.").arg(refusal, m_editor->text()) : refusal);
    } else if (m_held) {
        report(*m_held);
    }
    m_typing = false;
    m_held.reset();
    rewriteText();
    Q_EMIT finished();
}

/// What was reported on the way to a refused text must not stay.
void QuantityField::takeBack() {
    if (m_before && m_value != m_before) {
        report(*m_before);
    }
    m_held.reset();
    rewriteText();
}

bool QuantityField::eventFilter(QObject* watched, QEvent* event) {
    const bool escape =
        event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape;
    if (escape && m_typing) {
        m_patience->stop();
        showMessage({});
        takeBack();
        m_typing = false;
        Q_EMIT finished();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void QuantityField::showMessage(const QString& text) {
    m_message->setText(text);
    m_message->setVisible(!text.isEmpty());
}

} // namespace pumpwright
