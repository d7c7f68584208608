#pragma once

#include <QStyledItemDelegate>

namespace pumpwright {

/// Draws a finding: mark and signal word, the rule's name, and the begin of what was found.
class FindingDelegate final : public QStyledItemDelegate {
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace pumpwright
