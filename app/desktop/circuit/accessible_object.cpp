#include "app/desktop/circuit/accessible_object.h"

#include "app/desktop/circuit/circuit_view.h"

#include <QCoreApplication>
#include <QKeySequence>

namespace pumpwright {
namespace {

struct Said {
    Q_DECLARE_TR_FUNCTIONS(pumpwright::AccessibleObject)
};

} // namespace

QString selectAction() {
    return QAccessibleActionInterface::setFocusAction();
}

QString openNameplateAction() {
    return QStringLiteral("OpenNameplate");
}

QString deleteAction() {
    return QStringLiteral("Delete");
}

QAccessibleInterface* AccessibleObject::parent() const {
    return QAccessible::queryAccessibleInterface(&m_circuit.view());
}

QString AccessibleObject::text(QAccessible::Text which) const {
    switch (which) {
    case QAccessible::Name:
        return m_circuit.nameOf(m_object);
    case QAccessible::Description:
    case QAccessible::Value:
        return m_circuit.stateTextOf(m_object);
    default:
        return {};
    }
}

QAccessible::Role AccessibleObject::role() const {
    return isFinding() ? QAccessible::Note : QAccessible::Graphic;
}

QAccessible::State AccessibleObject::state() const {
    QAccessible::State state;
    state.invalid = !isValid();
    state.selectable = true;
    state.focusable = true;
    state.multiSelectable = !isFinding();
    state.selected = m_circuit.isSelected(m_object);
    state.focused = m_circuit.hasFocus(m_object);
    const CircuitView& view = m_circuit.view();
    state.invisible = !view.isVisible();
    const QRect seen(view.viewport()->mapToGlobal(QPoint()), view.viewport()->size());
    state.offscreen = !rect().intersects(seen);
    return state;
}

void* AccessibleObject::interface_cast(QAccessible::InterfaceType type) {
    return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this) : nullptr;
}

QStringList AccessibleObject::actionNames() const {
    QStringList names{selectAction(), openNameplateAction()};
    if (!isFinding()) {
        names << deleteAction();
    }
    return names;
}

QString AccessibleObject::localizedActionName(const QString& name) const {
    if (name == selectAction()) {
        return Said::tr("Select");
    }
    if (name == openNameplateAction()) {
        return Said::tr("Open the Nameplate");
    }
    return name == deleteAction() ? Said::tr("Delete") : QString();
}

QString AccessibleObject::localizedActionDescription(const QString& name) const {
    if (name == selectAction()) {
        return isFinding() ? Said::tr("Selects what the finding is about and brings it into view")
                           : Said::tr("Selects it and brings it into view");
    }
    if (name == openNameplateAction()) {
        return Said::tr("Shows its values, to be changed");
    }
    return name == deleteAction() ? Said::tr("Takes it out of the circuit; undo brings it back") : QString();
}

void AccessibleObject::doAction(const QString& name) {
    if (!isValid() || !actionNames().contains(name)) {
        return;
    }
    CircuitView& view = m_circuit.view();
    m_circuit.selection().show(m_circuit.meaningOf(m_object));
    view.setFocus();
    if (name == openNameplateAction()) {
        Q_EMIT view.nameplateRequested();
    } else if (name == deleteAction()) {
        view.deleteSelection();
    }
}

QStringList AccessibleObject::keyBindingsForAction(const QString& name) const {
    if (name == openNameplateAction()) {
        return {QKeySequence(Qt::Key_Return).toString(QKeySequence::NativeText)};
    }
    if (name == deleteAction()) {
        return {QKeySequence(Qt::Key_Delete).toString(QKeySequence::NativeText)};
    }
    return {};
}

} // namespace pumpwright
