#include "app/desktop/cautions_bar.h"

#include "app/desktop/panels/quantity_text.h"
#include "app/desktop/panels/signal_mark.h"
#include "core/sheet/wiring_sheet.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

namespace pumpwright {
namespace {

constexpr int kMarkSize = 28;

/// The mark of WARNING beside the words.
class Mark final : public QWidget {
public:
    explicit Mark(QWidget* parent) : QWidget(parent) { setFixedSize(kMarkSize, kMarkSize); }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        paintSignalMark(painter, QRectF(rect()).adjusted(2, 2, -2, -2), SignalWord::Warning, palette());
    }
};

QLabel* newLabel(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

/// In two columns: the bar is wide, and must not take the canvas's height.
QGridLayout* newTexts(QWidget* parent) {
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(16);
    grid->setVerticalSpacing(2);
    const auto& all = cautions();
    const int rows = (static_cast<int>(all.size()) + 1) / 2;
    for (int i = 0; i < static_cast<int>(all.size()); ++i) {
        const QString text = QStringLiteral("• ") + translatedWords(all[static_cast<std::size_t>(i)]);
        grid->addWidget(newLabel(text, parent), i % rows, i / rows, Qt::AlignTop);
    }
    grid->setColumnStretch(0, 1);
    grid->setColumnStretch(1, 1);
    return grid;
}

} // namespace

CautionsBar::CautionsBar(QWidget* parent) : QFrame(parent) {
    setFrameShape(QFrame::StyledPanel);
    setAccessibleName(tr("Cautions"));
    auto* heading = newLabel(tr("Before you rely on anything here"), this);
    QFont bold = heading->font();
    bold.setBold(true);
    heading->setFont(bold);
    auto* button = new QPushButton(tr("Understood"), this);
    button->setMinimumHeight(28);
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, this, &CautionsBar::understood);

    auto* head = new QHBoxLayout;
    head->addWidget(new Mark(this));
    head->addWidget(heading, 1);
    head->addWidget(button);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 4, 8, 4);
    column->addLayout(head);
    column->addLayout(newTexts(this));
}

} // namespace pumpwright
