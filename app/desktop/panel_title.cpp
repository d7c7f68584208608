#include "app/desktop/panel_title.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

namespace pumpwright {
namespace {

constexpr int kLeastTarget_px = 24;

QToolButton* newButton(const QString& sign, const QString& name, QWidget* parent) {
    auto* button = new QToolButton(parent);
    button->setText(sign);
    button->setAutoRaise(true);
    button->setAccessibleName(name);
    button->setToolTip(name);
    button->setMinimumSize(kLeastTarget_px, kLeastTarget_px);
    return button;
}

} // namespace

PanelTitle::PanelTitle(QDockWidget& panel) : QWidget(&panel) {
    auto* title = new QLabel(panel.windowTitle(), this);
    title->setTextFormat(Qt::PlainText);
    auto* help = newButton(QStringLiteral("?"), tr("Help on: %1 (F1)").arg(panel.windowTitle()), this);
    auto* close = newButton(QString(QChar(0x00D7)), tr("Close: %1").arg(panel.windowTitle()), this);
    connect(help, &QToolButton::clicked, this, &PanelTitle::helpRequested);
    connect(close, &QToolButton::clicked, &panel, &QDockWidget::close);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(8, 0, 2, 0);
    row->setSpacing(2);
    row->addWidget(title, 1);
    row->addWidget(help);
    row->addWidget(close);
}

} // namespace pumpwright
