#include "app/desktop/panels/finding_delegate.h"

#include "app/desktop/panels/findings_model.h"
#include "app/desktop/panels/signal_mark.h"

#include <QApplication>
#include <QPainter>

namespace pumpwright {
namespace {

constexpr int kMargin = 6;
constexpr int kGap = 6;

int markSize(const QFontMetrics& metrics) {
    return std::max(18, metrics.height() + 4);
}

QFont boldened(QFont font) {
    font.setBold(true);
    return font;
}

} // namespace

void FindingDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                            const QModelIndex& index) const {
    QStyleOptionViewItem item = option;
    initStyleOption(&item, index);
    item.text.clear();
    const QStyle* style = item.widget ? item.widget->style() : QApplication::style();
    style->drawControl(QStyle::CE_ItemViewItem, &item, painter, item.widget);

    const bool selected = (item.state & QStyle::State_Selected) != 0;
    const bool waived = index.data(FindingsModel::WaivedRole).toBool();
    const auto word = static_cast<SignalWord>(index.data(FindingsModel::SignalWordRole).toInt());
    const auto role = selected ? QPalette::HighlightedText : QPalette::Text;
    const QFontMetrics bold(boldened(item.font));
    const int mark = markSize(bold);
    const QRect box = item.rect.adjusted(kMargin, kMargin, -kMargin, -kMargin);

    painter->save();
    painter->setPen(item.palette.color(QPalette::Active, role));
    painter->setOpacity(waived ? 0.75 : 1.0);
    paintSignalMark(*painter, QRectF(box.left(), box.top(), mark, mark), word, item.palette);
    painter->setFont(boldened(item.font));
    const QRect rest = box.adjusted(mark + kGap, 0, 0, 0);
    QString signal = translatedWords(signalWordName(word));
    if (waived) {
        signal = tr("%1, waived").arg(signal);
    }
    painter->drawText(rest.left(), rest.top() + bold.ascent() + (mark - bold.height()) / 2, signal);
    const QString title = index.data(FindingsModel::TitleRole).toString();
    painter->drawText(rest.left(), rest.top() + mark + bold.ascent(),
                      bold.elidedText(title, Qt::ElideRight, rest.width()));
    painter->setFont(item.font);
    const QFontMetrics plain(item.font);
    const QString what = index.data(FindingsModel::WhatRole).toString();
    painter->drawText(rest.left(), rest.top() + mark + bold.lineSpacing() + plain.ascent(),
                      plain.elidedText(what, Qt::ElideRight, rest.width()));
    painter->restore();
}

QSize FindingDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    const QFontMetrics metrics(option.font);
    return {120, 2 * kMargin + markSize(metrics) + 2 * metrics.lineSpacing()};
}

} // namespace pumpwright
