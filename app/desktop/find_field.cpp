#include "app/desktop/find_field.h"

#include "app/desktop/circuit/find_objects.h"
#include "app/desktop/document/document.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>

namespace pumpwright {
namespace {

constexpr int kWidth_letters = 18;

} // namespace

FindField::FindField(Document& document, Selection& selection, QWidget* parent)
    : QWidget(parent), m_document(document), m_selection(selection), m_field(new QLineEdit(this)),
      m_state(new QLabel(this)) {
    m_field->setPlaceholderText(tr("Find in the circuit"));
    m_field->setAccessibleName(tr("Find in the circuit"));
    m_field->setToolTip(tr("Reference, label, kind or value; Return goes to the next match"));
    m_field->setClearButtonEnabled(true);
    m_field->setMinimumHeight(24);
    m_field->setFixedWidth(kWidth_letters * fontMetrics().averageCharWidth() + 40);
    m_field->installEventFilter(this);
    m_state->setTextFormat(Qt::PlainText);
    m_state->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(4, 0, 8, 0);
    row->addWidget(m_state);
    row->addWidget(m_field);
    connect(m_field, &QLineEdit::textEdited, this, [this] { show(0); });
    connect(m_field, &QLineEdit::textChanged, this, [this](const QString& text) {
        if (text.isEmpty()) {
            m_state->clear();
        }
    });
}

QString FindField::state() const {
    return m_state->text();
}

void FindField::show(int match) {
    const std::vector<SelectedObjects> found = findObjects(m_document.circuit(), m_field->text());
    const auto count = static_cast<int>(found.size());
    if (count == 0) {
        m_state->setText(m_field->text().isEmpty() ? QString() : tr("nothing found"));
        return;
    }
    m_match = (match + count) % count;
    m_selection.show(found[static_cast<std::size_t>(m_match)]);
    m_state->setText(tr("%1 of %2").arg(m_match + 1).arg(count));
}

bool FindField::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_field && event->type() == QEvent::KeyPress) {
        const auto& key = static_cast<const QKeyEvent&>(*event);
        if (key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter) {
            show(key.modifiers() & Qt::ShiftModifier ? m_match - 1 : m_match + 1);
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace pumpwright
