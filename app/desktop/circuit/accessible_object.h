#pragma once

#include "app/desktop/circuit/accessible_circuit.h"

namespace pumpwright {

/// A part, wire, hose or finding on the canvas for screen readers. It names its object and holds nothing of
/// it, so it is never out of date; once the object is gone it is invalid, and after undo valid again.
class AccessibleObject final : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    AccessibleObject(const AccessibleCircuit& circuit, CanvasObject object)
        : m_circuit(circuit), m_object(std::move(object)) {}

    const CanvasObject& canvasObject() const { return m_object; }

    bool isValid() const override { return m_circuit.contains(m_object); }
    QObject* object() const override { return nullptr; }
    QAccessibleInterface* parent() const override;
    QAccessibleInterface* child(int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    QString text(QAccessible::Text which) const override;
    void setText(QAccessible::Text, const QString&) override {} // the Nameplate is where names are changed
    QRect rect() const override { return m_circuit.boundsOf(m_object); }
    QAccessible::Role role() const override;
    QAccessible::State state() const override;
    void* interface_cast(QAccessible::InterfaceType type) override;

    QStringList actionNames() const override;
    QString localizedActionName(const QString& name) const override;
    QString localizedActionDescription(const QString& name) const override;
    void doAction(const QString& name) override;
    QStringList keyBindingsForAction(const QString& name) const override;

private:
    bool isFinding() const { return std::holds_alternative<FindingRef>(m_object); }

    const AccessibleCircuit& m_circuit;
    CanvasObject m_object;
};

/// Names of the actions. Selecting is what Qt calls setting the focus, so that readers find it.
QString selectAction();
QString openNameplateAction();
QString deleteAction();

} // namespace pumpwright
