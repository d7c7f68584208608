#include "app/desktop/circuit/empty_state.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace pumpwright {

EmptyState::EmptyState(QWidget* parent) : QWidget(parent) {
    auto* text = new QLabel(tr("Open a sample, drag a part here, or open a file."), this);
    text->setTextFormat(Qt::PlainText);
    text->setAlignment(Qt::AlignCenter);
    text->setWordWrap(true); // on a small screen
    QFont font = text->font();
    font.setPointSizeF(font.pointSizeF() * 1.25);
    text->setFont(font);
    auto* sample = new QPushButton(tr("Open a sample"), this);
    auto* file = new QPushButton(tr("Open a file…"), this);
    for (QPushButton* button : {sample, file}) {
        button->setMinimumHeight(32);
        button->setMinimumWidth(130);
    }
    connect(sample, &QPushButton::clicked, this, &EmptyState::sampleRequested);
    connect(file, &QPushButton::clicked, this, &EmptyState::fileRequested);

    auto* buttons = new QHBoxLayout;
    buttons->addStretch();
    buttons->addWidget(sample);
    buttons->addWidget(file);
    buttons->addStretch();
    auto* lines = new QVBoxLayout(this);
    lines->addWidget(text);
    lines->addSpacing(12);
    lines->addLayout(buttons);
}

} // namespace pumpwright
