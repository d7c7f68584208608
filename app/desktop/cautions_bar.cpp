#include "app/desktop/cautions_bar.h"

#include "app/desktop/panels/quantity_text.h"
#include "app/desktop/panels/signal_mark.h"
#include "core/sheet/wiring_sheet.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace pumpwright {
namespace {

constexpr int kMarkSize = 28;
constexpr int kGreatestHeight = 150;

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

QWidget* textOfCautions(QWidget* parent) {
    auto* texts = new QWidget(parent);
    auto* column = new QVBoxLayout(texts);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    for (const std::string& caution : cautions()) {
        column->addWidget(newLabel(QStringLiteral("• ") + shown(caution), texts));
    }
    return texts;
}

} // namespace

CautionsBar::CautionsBar(QWidget* parent) : QFrame(parent) {
    setFrameShape(QFrame::StyledPanel);
    setAccessibleName(tr("Cautions"));
    setMaximumHeight(kGreatestHeight);
    auto* heading = newLabel(tr("Before you rely on anything here"), this);
    QFont bold = heading->font();
    bold.setBold(true);
    heading->setFont(bold);
    auto* scroll = new QScrollArea(this);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setAccessibleName(tr("Text of the cautions"));
    scroll->setWidget(textOfCautions(scroll));
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
    column->addWidget(scroll, 1);
}

} // namespace pumpwright
