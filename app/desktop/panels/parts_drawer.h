#pragma once

#include "core/circuit/circuit.h"
#include "core/files/catalogue.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QSortFilterProxyModel;
class QTreeView;

namespace pumpwright {

class PartsModel;

/// The searchable list to place parts from: a click or Return puts the part on the pointer, a drag drops it.
class PartsDrawer final : public QWidget {
    Q_OBJECT

public:
    explicit PartsDrawer(const Catalogue& catalogue, QWidget* parent = nullptr);

    QLineEdit& search() { return *m_search; }
    QTreeView& list() { return *m_list; }

Q_SIGNALS:
    void placeRequested(const pumpwright::Part& prototype);

private:
    void buildList();
    void filter(const QString& text);
    QModelIndex bestMatch(const QStringList& words) const;
    void place(const QModelIndex& shownIndex);
    bool eventFilter(QObject* watched, QEvent* event) override;

    PartsModel* m_model;
    QSortFilterProxyModel* m_filtered;
    QLineEdit* m_search;
    QTreeView* m_list;
    QLabel* m_nothing;
};

} // namespace pumpwright
