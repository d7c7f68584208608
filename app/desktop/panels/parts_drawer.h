#pragma once

#include "core/circuit/circuit.h"
#include "core/files/catalogue.h"

#include <QWidget>

#include <optional>

class QLabel;
class QLineEdit;
class QSortFilterProxyModel;
class QTreeView;

namespace pumpwright {

class PartsModel;

/// The searchable list to place parts from: a click or Return puts the part on the pointer, a drag drops it,
/// Ctrl with Return puts it where there is room and leaves the keys here for the next one.
class PartsDrawer final : public QWidget {
    Q_OBJECT

public:
    explicit PartsDrawer(const Catalogue& catalogue, QWidget* parent = nullptr);

    QLineEdit& search() { return *m_search; }
    QTreeView& list() { return *m_list; }

Q_SIGNALS:
    void placeRequested(const pumpwright::Part& prototype);
    void placeWhereFreeRequested(const pumpwright::Part& prototype);

private:
    void buildList();
    void filter(const QString& text);
    QModelIndex bestMatch(const QStringList& words) const;
    std::optional<Part> prototypeAt(const QModelIndex& shownIndex) const;
    void place(const QModelIndex& shownIndex);
    void placeWhereFree(const QModelIndex& shownIndex);
    bool eventFilter(QObject* watched, QEvent* event) override;

    PartsModel* m_model;
    QSortFilterProxyModel* m_filtered;
    QLineEdit* m_search;
    QTreeView* m_list;
    QLabel* m_nothing;
};

} // namespace pumpwright
