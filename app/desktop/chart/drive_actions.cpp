#include "app/desktop/chart/drive_actions.h"

#include "app/desktop/chart/drive_chart.h"
#include "app/desktop/document/playback.h"

#include <QAction>
#include <QComboBox>
#include <QMenu>
#include <QToolBar>

namespace pumpwright {

DriveActions::DriveActions(Playback& playback, DriveChart& chart)
    : QObject(&chart), m_playback(playback), m_chart(chart),
      m_play(newAction(tr("&Play the drive"), tr("Play"), QKeySequence(Qt::Key_F5),
                       tr("Run the cursor over the drive, on the canvas too"))),
      m_before(newAction(tr("Event &before"), tr("◂ Event"), QKeySequence(Qt::SHIFT | Qt::Key_F7),
                         tr("Cursor to the event before"))),
      m_next(newAction(tr("&Next event"), tr("Event ▸"), QKeySequence(Qt::Key_F7),
                       tr("Cursor to the next event"))),
      m_slow(newAction(tr("&Slow at events"), tr("Slow at events"), {},
                       tr("Play slowly past events, so that an armature can be seen to travel"))),
      m_mark(newAction(tr("Set the &mark at the cursor"), tr("Mark"), QKeySequence(Qt::Key_F8),
                       tr("Set a mark at the cursor, to read differences from"))),
      m_dropMark(newAction(tr("&Remove the mark"), tr("No mark"), QKeySequence(Qt::SHIFT | Qt::Key_F8),
                           tr("Remove the mark"))) {
    m_slow->setCheckable(true);
    m_slow->setChecked(playback.slowsAtEvents());
    connect(m_play, &QAction::triggered, this,
            [this] { m_playback.isPlaying() ? m_playback.pause() : m_playback.play(); });
    connect(m_before, &QAction::triggered, &playback, &Playback::goToEventBefore);
    connect(m_next, &QAction::triggered, &playback, &Playback::goToNextEvent);
    connect(m_slow, &QAction::toggled, &playback, &Playback::setSlowsAtEvents);
    connect(m_mark, &QAction::triggered, &chart, &DriveChart::setMark);
    connect(m_dropMark, &QAction::triggered, &chart, &DriveChart::removeMark);
    connect(&playback, &Playback::playingChanged, this, &DriveActions::showPlaying);
}

QAction* DriveActions::newAction(const QString& text, const QString& iconText, const QKeySequence& keys,
                                 const QString& tip) {
    auto* action = new QAction(text, this);
    action->setIconText(iconText);
    action->setShortcut(keys);
    action->setToolTip(
        keys.isEmpty() ? tip : QStringLiteral("%1 (%2)").arg(tip, keys.toString(QKeySequence::NativeText)));
    action->setStatusTip(tip);
    return action;
}

QComboBox* DriveActions::newRateChooser(QWidget* parent) {
    auto* rates = new QComboBox(parent);
    rates->setAccessibleName(tr("Speed of playing"));
    rates->setToolTip(tr("How fast the drive is played"));
    for (const auto& [text, rate] : {std::pair{tr("a hundredth"), 0.01},
                                     {tr("a tenth"), 0.1},
                                     {tr("real time"), 1.0},
                                     {tr("10 times"), 10.0},
                                     {tr("60 times"), 60.0}}) {
        rates->addItem(text, rate);
    }
    rates->setCurrentIndex(rates->findData(m_playback.rate()));
    connect(rates, &QComboBox::currentIndexChanged, this,
            [this, rates] { m_playback.setRate(rates->currentData().toDouble()); });
    return rates;
}

void DriveActions::fillMenu(QMenu& menu) {
    menu.addAction(m_play);
    menu.addAction(m_slow);
    menu.addSeparator();
    menu.addActions({m_before, m_next});
    menu.addSeparator();
    menu.addActions({m_mark, m_dropMark});
}

void DriveActions::fillToolBar(QToolBar& bar, QWidget& time) {
    bar.addAction(m_play);
    bar.addWidget(newRateChooser(&bar));
    bar.addSeparator();
    bar.addActions({m_before, m_next});
    bar.addWidget(&time);
    bar.addAction(m_mark);
}

void DriveActions::showPlaying(bool playing) {
    m_play->setText(playing ? tr("&Pause") : tr("&Play the drive"));
    m_play->setIconText(playing ? tr("Pause") : tr("Play"));
}

} // namespace pumpwright
