#pragma once

#include "core/circuit/ids.h"

#include <QObject>

#include <set>

namespace pumpwright {

/// What is selected, shared by canvas and panels.
struct SelectedObjects {
    std::set<PartId> parts;
    std::set<WireId> wires;
    std::set<HoseId> hoses;
    bool empty() const { return parts.empty() && wires.empty() && hoses.empty(); }
    friend bool operator==(const SelectedObjects&, const SelectedObjects&) = default;
};

class Selection final : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    const SelectedObjects& objects() const { return m_objects; }
    void select(const SelectedObjects& objects);
    /// Selects and asks the canvas to bring it into view.
    void show(const SelectedObjects& objects);

Q_SIGNALS:
    void changed();
    void showRequested();

private:
    SelectedObjects m_objects;
};

} // namespace pumpwright
