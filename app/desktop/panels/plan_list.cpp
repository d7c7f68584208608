#include "app/desktop/panels/plan_list.h"

#include "app/desktop/panels/plan_cell_delegate.h"
#include "app/desktop/panels/plan_table_model.h"
#include "app/desktop/panels/table_names.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>

namespace pumpwright {
namespace {

QLabel* newLabel(QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

QToolButton* newButton(const QString& text, const QString& name, QWidget* parent) {
    auto* button = new QToolButton(parent);
    button->setText(text);
    button->setAccessibleName(name);
    button->setToolTip(name);
    button->setMinimumSize(28, 26);
    return button;
}

} // namespace

PlanList::PlanList(PlanTable table, const ShownUnits& units, QWidget* parent)
    : QWidget(parent), m_model(new PlanTableModel(table, units, this)), m_view(new QTableView(this)),
      m_add(newButton(tr("Add"), tr("Add a %1").arg(table.row), this)),
      m_remove(newButton(tr("Remove"), tr("Remove the chosen %1").arg(table.row), this)),
      m_empty(newLabel(this)), m_message(newLabel(this)) {
    auto* heading = newLabel(this);
    heading->setText(table.title);
    QFont bold = heading->font();
    bold.setBold(true);
    heading->setFont(bold);
    m_view->setAccessibleName(table.title);
    m_empty->setText(table.empty);
    m_message->hide();
    buildView();

    auto* head = new QHBoxLayout;
    head->addWidget(heading, 1);
    head->addWidget(m_add);
    head->addWidget(m_remove);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addLayout(head);
    column->addWidget(m_empty);
    column->addWidget(m_view);
    column->addWidget(m_message);

    connect(m_add, &QToolButton::clicked, this, &PlanList::addRow);
    connect(m_remove, &QToolButton::clicked, this, &PlanList::removeCurrentRow);
    connect(m_model, &PlanTableModel::planEdited, this, &PlanList::planEdited);
    connect(m_model, &PlanTableModel::refused, this, &PlanList::showMessage);
    connect(m_view->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& current) { m_remove->setEnabled(current.isValid()); });
    m_remove->setEnabled(false);
    fitHeight();
}

void PlanList::buildView() {
    m_view->setModel(m_model);
    m_view->setItemDelegate(new PlanCellDelegate(m_view));
    m_view->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::SelectedClicked |
                            QAbstractItemView::EditKeyPressed | QAbstractItemView::AnyKeyPressed);
    m_view->setTabKeyNavigation(false);
    m_view->setSelectionMode(QAbstractItemView::SingleSelection);
    m_view->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_view->horizontalHeader()->setMinimumSectionSize(36);
    m_view->horizontalHeader()->setHighlightSections(false);
    m_view->verticalHeader()->setHighlightSections(false);
    m_view->verticalHeader()->setDefaultSectionSize(std::max(26, fontMetrics().height() + 8));
    m_view->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_view->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_view->setCornerButtonEnabled(false);
    nameHeaders(*m_view);
    m_view->installEventFilter(this);
}

void PlanList::setPlan(const DrivePlan& plan) {
    m_model->setPlan(plan);
    m_remove->setEnabled(m_view->currentIndex().isValid());
    fitHeight();
}

/// The whole list is shown: the panel scrolls, not each list in it.
void PlanList::fitHeight() {
    const bool empty = m_model->rowCount() == 0;
    m_empty->setVisible(empty);
    m_view->setVisible(!empty);
    const int rows = m_view->verticalHeader()->length();
    m_view->setFixedHeight(m_view->horizontalHeader()->sizeHint().height() + rows + 2 * m_view->frameWidth());
}

void PlanList::addRow() {
    showMessage(m_model->addRow());
    const int last = m_model->rowCount() - 1;
    if (last >= 0 && m_message->isHidden()) {
        m_view->setCurrentIndex(m_model->index(last, 0));
        m_view->setFocus(Qt::OtherFocusReason);
    }
}

void PlanList::removeCurrentRow() {
    m_model->removeRowAt(m_view->currentIndex().row());
}

void PlanList::showMessage(const QString& text) {
    m_message->setText(text);
    m_message->setVisible(!text.isEmpty());
}

bool PlanList::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_view && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Delete) {
        removeCurrentRow();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace pumpwright
