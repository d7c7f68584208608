#include "app/desktop/panels/plan_cell_delegate.h"

#include "app/desktop/panels/plan_table_model.h"

#include <QComboBox>
#include <QLineEdit>

namespace pumpwright {
namespace {

constexpr int kLeastHeight = 26;

} // namespace

QWidget* PlanCellDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                        const QModelIndex& index) const {
    const QString name =
        index.model()->headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString();
    const QVariant choices = index.data(PlanTableModel::ChoicesRole);
    if (!choices.isValid()) {
        auto* editor = new QLineEdit(parent);
        editor->setFrame(false);
        editor->setAccessibleName(name);
        return editor;
    }
    auto* editor = new QComboBox(parent);
    editor->setAccessibleName(name);
    const QVariantList pairs = choices.toList();
    for (const QVariant& pair : pairs) {
        const QStringList idAndLabel = pair.toStringList();
        editor->addItem(idAndLabel.value(1), idAndLabel.value(0));
    }
    connect(editor, &QComboBox::activated, this, [this, editor] {
        auto* self = const_cast<PlanCellDelegate*>(this); // Qt asks for editors through a const function
        Q_EMIT self->commitData(editor);
        Q_EMIT self->closeEditor(editor);
    });
    return editor;
}

void PlanCellDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    const QString value = index.data(Qt::EditRole).toString();
    if (auto* choices = qobject_cast<QComboBox*>(editor)) {
        choices->setCurrentIndex(choices->findData(value));
        return;
    }
    // A new plan that arrives while a cell is edited must not overwrite what is being typed.
    auto* field = qobject_cast<QLineEdit*>(editor);
    if (field && !field->isModified()) {
        field->setText(value);
        field->selectAll();
    }
}

void PlanCellDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                    const QModelIndex& index) const {
    if (const auto* choices = qobject_cast<QComboBox*>(editor)) {
        if (choices->currentIndex() >= 0) {
            model->setData(index, choices->currentData(), Qt::EditRole);
        }
        return;
    }
    if (const auto* field = qobject_cast<QLineEdit*>(editor)) {
        model->setData(index, field->text(), Qt::EditRole);
    }
}

QSize PlanCellDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    return QStyledItemDelegate::sizeHint(option, index).expandedTo({0, kLeastHeight});
}

} // namespace pumpwright
