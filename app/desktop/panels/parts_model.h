#pragma once

#include "core/files/catalogue.h"
#include "core/parts/part_kind.h"

#include <QAbstractItemModel>

namespace pumpwright {

/// Title of a group of the Parts drawer: "Supply".
QString drawerGroupTitle(DrawerGroup group);

/// What the Parts drawer lists: groups by what the parts do, and in each the entries of the catalogue, then
/// the kinds that no entry offers.
class PartsModel final : public QAbstractItemModel {
    Q_OBJECT

public:
    enum Column { Name, Price, ColumnCount };
    enum Role {
        EntryIdRole = Qt::UserRole, ///< id of the catalogue entry; empty for a bare kind or a group
        SearchTextRole,             ///< everything that the search looks in
    };

    explicit PartsModel(const Catalogue& catalogue, QObject* parent = nullptr);

    /// The part that a row stands for, without reference; none for a group.
    std::optional<Part> prototype(const QModelIndex& index) const;

    QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
    QModelIndex parent(const QModelIndex& child) const override;
    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    QStringList mimeTypes() const override;
    QMimeData* mimeData(const QModelIndexList& indexes) const override;

private:
    struct Item {
        QString title;
        QString note;
        double price = 0;
        QString entryId;
        Part part;
        const PartKind* kind = nullptr;
    };
    struct Group {
        DrawerGroup group;
        std::vector<Item> items;
    };

    const Item* item(const QModelIndex& index) const;
    Group& groupOf(DrawerGroup group);
    QVariant groupData(const Group& group, const QModelIndex& index, int role) const;
    QVariant itemData(const Item& item, const QModelIndex& index, int role) const;
    using QAbstractItemModel::itemData;

    QString m_currency;
    std::vector<Group> m_groups;
};

} // namespace pumpwright
