#include "app/desktop/panels/parts_model.h"

#include "app/desktop/circuit/circuit_view.h"
#include "app/desktop/panels/quantity_text.h"

#include <QFont>
#include <QMimeData>

#include <algorithm>
#include <set>

namespace pumpwright {
namespace {

/// Internal id of a group's index; items carry their group's row plus one.
constexpr quintptr kGroup = 0;

/// Texts of the program's own catalogue in the user's language; those of another one as they are.
QString catalogueText(const std::string& text) {
    return text.empty() ? QString() : translatedWords(text);
}

} // namespace

QString drawerGroupTitle(DrawerGroup group) {
    switch (group) {
    case DrawerGroup::Supply:
        return PartsModel::tr("Supply");
    case DrawerGroup::Protection:
        return PartsModel::tr("Protection");
    case DrawerGroup::Control:
        return PartsModel::tr("Control");
    case DrawerGroup::Sensing:
        return PartsModel::tr("Sensing");
    case DrawerGroup::Suppression:
        return PartsModel::tr("Suppression");
    case DrawerGroup::Load:
        return PartsModel::tr("Load");
    case DrawerGroup::Vacuum:
        return PartsModel::tr("Vacuum");
    case DrawerGroup::Connection:
        return PartsModel::tr("Connection");
    }
    return {};
}

PartsModel::PartsModel(const Catalogue& catalogue, QObject* parent)
    : QAbstractItemModel(parent), m_currency(shown(catalogue.currency)) {
    std::set<std::string> offered;
    for (const CatalogueEntry& entry : catalogue.entries) {
        const PartKind* kind = findPartKind(entry.kind);
        if (!kind) {
            continue; // of a kind that only a newer version knows
        }
        offered.insert(entry.kind);
        groupOf(kind->group())
            .items.push_back({catalogueText(entry.title), catalogueText(entry.note), entry.price,
                              shown(entry.id), partFromCatalogue(entry, {}, {}), kind});
    }
    for (const PartKind* kind : partKinds()) {
        if (offered.count(std::string(kind->id())) == 0) {
            groupOf(kind->group())
                .items.push_back({translatedWords(kind->title()), {}, 0, {}, newPart(*kind, {}, {}), kind});
        }
    }
    std::stable_sort(m_groups.begin(), m_groups.end(),
                     [](const Group& one, const Group& other) { return one.group < other.group; });
}

PartsModel::Group& PartsModel::groupOf(DrawerGroup group) {
    const auto found =
        std::find_if(m_groups.begin(), m_groups.end(), [&](const Group& one) { return one.group == group; });
    return found != m_groups.end() ? *found : m_groups.emplace_back(Group{group, {}});
}

const PartsModel::Item* PartsModel::item(const QModelIndex& index) const {
    if (!index.isValid() || index.internalId() == kGroup) {
        return nullptr;
    }
    return &m_groups[index.internalId() - 1].items[static_cast<std::size_t>(index.row())];
}

std::optional<Part> PartsModel::prototype(const QModelIndex& index) const {
    const Item* found = item(index);
    return found ? std::optional(found->part) : std::nullopt;
}

QModelIndex PartsModel::index(int row, int column, const QModelIndex& parent) const {
    if (!hasIndex(row, column, parent)) {
        return {};
    }
    return createIndex(row, column, parent.isValid() ? static_cast<quintptr>(parent.row()) + 1 : kGroup);
}

QModelIndex PartsModel::parent(const QModelIndex& child) const {
    if (!child.isValid() || child.internalId() == kGroup) {
        return {};
    }
    return createIndex(static_cast<int>(child.internalId() - 1), 0, kGroup);
}

int PartsModel::rowCount(const QModelIndex& parent) const {
    if (!parent.isValid()) {
        return static_cast<int>(m_groups.size());
    }
    const bool isGroup = parent.internalId() == kGroup && parent.column() == 0;
    return isGroup ? static_cast<int>(m_groups[static_cast<std::size_t>(parent.row())].items.size()) : 0;
}

int PartsModel::columnCount(const QModelIndex&) const {
    return ColumnCount;
}

QVariant PartsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    if (const Item* found = item(index)) {
        return itemData(*found, index, role);
    }
    return groupData(m_groups[static_cast<std::size_t>(index.row())], index, role);
}

QVariant PartsModel::groupData(const Group& group, const QModelIndex& index, int role) const {
    if (role == Qt::DisplayRole && index.column() == Name) {
        return drawerGroupTitle(group.group);
    }
    if (role == Qt::FontRole) {
        QFont bold;
        bold.setBold(true);
        return bold;
    }
    return {};
}

QVariant PartsModel::itemData(const Item& item, const QModelIndex& index, int role) const {
    const QString price = item.price > 0
                              ? QStringLiteral("%1 %2").arg(QString::number(item.price, 'f', 2), m_currency)
                              : QString();
    switch (role) {
    case Qt::DisplayRole:
        return index.column() == Name ? item.title : price.section(QLatin1Char(' '), 0, 0);
    case Qt::ToolTipRole:
        return QStringList{item.title, item.note, price}.join(QLatin1Char('\n')).trimmed();
    case Qt::AccessibleDescriptionRole:
        return item.note;
    case Qt::TextAlignmentRole:
        return index.column() == Price ? QVariant(Qt::AlignRight | Qt::AlignVCenter) : QVariant();
    case EntryIdRole:
        return item.entryId;
    case SearchTextRole:
        return QStringList{item.title, item.note, translatedWords(item.kind->title()),
                           drawerGroupTitle(item.kind->group())}
            .join(QLatin1Char(' '));
    default:
        return {};
    }
}

QVariant PartsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole || orientation != Qt::Horizontal) {
        return {};
    }
    return section == Name ? tr("Part") : m_currency;
}

Qt::ItemFlags PartsModel::flags(const QModelIndex& index) const {
    const Item* found = item(index);
    if (!found) {
        return index.isValid() ? Qt::ItemIsEnabled : Qt::NoItemFlags;
    }
    const Qt::ItemFlags plain = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    return found->entryId.isEmpty() ? plain : plain | Qt::ItemIsDragEnabled;
}

QStringList PartsModel::mimeTypes() const {
    return {QLatin1String(kCatalogueMimeType)};
}

QMimeData* PartsModel::mimeData(const QModelIndexList& indexes) const {
    for (const QModelIndex& index : indexes) {
        const Item* found = item(index);
        if (found && !found->entryId.isEmpty()) {
            auto* mime = new QMimeData;
            mime->setData(QLatin1String(kCatalogueMimeType), found->entryId.toUtf8());
            return mime;
        }
    }
    return nullptr;
}

} // namespace pumpwright
