#include "app/desktop/panels/table_names.h"

#include <QAbstractButton>
#include <QCoreApplication>
#include <QHeaderView>
#include <QTableView>

namespace pumpwright {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("pumpwright", text);
}

} // namespace

void nameHeaders(QTableView& table) {
    const QString name = table.accessibleName();
    table.horizontalHeader()->setAccessibleName(tr("Columns of %1").arg(name));
    table.verticalHeader()->setAccessibleName(tr("Rows of %1").arg(name));
    if (auto* corner = table.findChild<QAbstractButton*>(QString(), Qt::FindDirectChildrenOnly)) {
        corner->setAccessibleName(tr("Select all of %1").arg(name));
    }
}

} // namespace pumpwright
