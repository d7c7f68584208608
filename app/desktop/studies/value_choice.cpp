#include "app/desktop/studies/value_choice.h"

#include "app/desktop/document/document.h"
#include "app/desktop/shown_text.h"

#include <QCompleter>
#include <QLineEdit>

namespace pumpwright {

ValueChoice::ValueChoice(Document& document, const QString& name, const QString& none, QWidget* parent)
    : QComboBox(parent), m_document(document), m_none(none) {
    setAccessibleName(name);
    setEditable(true); // to be searched by typing
    lineEdit()->setAccessibleName(tr("%1, typed").arg(name));
    setInsertPolicy(QComboBox::NoInsert);
    completer()->setCompletionMode(QCompleter::PopupCompletion);
    completer()->setFilterMode(Qt::MatchContains);
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(14);
    connect(&document, &Document::changed, this, [this](const ChangedObjects& changed) {
        if (changed.all || !changed.parts.empty() || !changed.wires.empty() || !changed.hoses.empty()) {
            fill();
        }
    });
    fill();
}

void ValueChoice::fill() {
    const QString before = currentData().toString();
    {
        const QSignalBlocker blocker(this); // whoever listens keeps what was typed for the value
        clear();
        if (!m_none.isEmpty()) {
            addItem(m_none, QString());
        }
        for (const Adjustable& one : adjustables(m_document.circuit())) {
            addItem(shown(one.label), editable(one.name));
        }
        setCurrentIndex(std::max(0, findData(before)));
    }
    if (currentData().toString() != before) {
        Q_EMIT currentIndexChanged(currentIndex());
    }
}

std::optional<Adjustable> ValueChoice::chosen() const {
    // What was typed and chosen from no list is nothing.
    if (currentIndex() < 0 || currentText() != itemText(currentIndex())) {
        return std::nullopt;
    }
    const Result<Adjustable> found =
        findAdjustable(m_document.circuit(), currentData().toString().toStdString());
    return found ? std::optional(*found) : std::nullopt;
}

void ValueChoice::choose(const std::string& valueName) {
    setCurrentIndex(findData(editable(valueName)));
}

} // namespace pumpwright
