#include "app/desktop/comparison_window.h"

#include "app/desktop/studies/sheet_table_model.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QTableView>
#include <QVBoxLayout>

namespace pumpwright {
namespace {

QLabel* plainLabel(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

} // namespace

ComparisonWindow::ComparisonWindow(const QString& before, const QString& after, const Comparison& comparison,
                                   QWidget* parent)
    : QDialog(parent) {
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("What differs"));
    auto* column = new QVBoxLayout(this);
    column->addWidget(plainLabel(tr("Before: %1\nAfter: %2").arg(before, after), this));
    addTable(tr("What was added, removed and changed"), tr("The circuits say the same."),
             differenceTable(comparison));
    addTable(tr("What that does to the findings"), tr("The findings are the same."),
             findingDifferenceTable(comparison));
    if (comparison.moved > 0) {
        column->addWidget(
            plainLabel(tr("Parts that only stand elsewhere on the drawing: %1").arg(comparison.moved), this));
    }
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
    column->addWidget(buttons);
    resize(parent == nullptr ? QSize(900, 600) : parent->size() * 0.8);
}

void ComparisonWindow::addTable(const QString& heading, const QString& whenEmpty, const SheetTable& table) {
    auto* column = qobject_cast<QVBoxLayout*>(layout());
    auto* title = plainLabel(heading, this);
    QFont font = title->font();
    font.setBold(true);
    title->setFont(font);
    column->addWidget(title);
    if (table.rows.empty()) {
        column->addWidget(plainLabel(whenEmpty, this));
        return;
    }
    auto* view = new QTableView(this);
    view->setAccessibleName(heading);
    auto* model = new SheetTableModel(view);
    model->setTable(table);
    view->setModel(model);
    view->setTabKeyNavigation(false);
    view->setSelectionBehavior(QAbstractItemView::SelectRows);
    view->verticalHeader()->hide();
    view->horizontalHeader()->setStretchLastSection(true);
    view->setWordWrap(true);
    view->resizeColumnsToContents();
    for (int i = 0; i < view->model()->columnCount(); ++i) { // none so wide that it hides the others
        view->setColumnWidth(i, std::min(view->columnWidth(i), 320));
    }
    view->resizeRowsToContents();
    column->addWidget(view, static_cast<int>(std::min<std::size_t>(table.rows.size(), 8)));
}

} // namespace pumpwright
