#pragma once

#include "tests/support/catch.h"

#include <QAbstractButton>
#include <QApplication>
#include <QDockWidget>
#include <QLabel>
#include <QLayout>
#include <QScrollArea>
#include <QScrollBar>
#include <QTranslator>

namespace pumpwright {

// Whether all that a window shows has room: nothing is cut, nothing lies over anything else.

/// English that is forty percent longer, with letters above and below the usual height.
class LongWinded final : public QTranslator {
public:
    QString translate(const char*, const char* source, const char*, int n) const override {
        QString text = QString::fromUtf8(source);
        if (n >= 0) {
            text.replace(QStringLiteral("%n"), QString::number(n));
        }
        for (auto more = (text.size() * 2 + 4) / 5; more > 0; more -= 6) {
            text += QStringLiteral(" Ågjpq").left(more + 1);
        }
        return text;
    }
    bool isEmpty() const override { return false; }
};

inline bool isShownInFull(const QWidget& widget) {
    return widget.visibleRegion().boundingRect().width() >= widget.width() - 1;
}

/// Whether the widget has the room that its text asks for, or breaks its lines, and nothing covers its sides.
inline bool hasRoom(const QWidget& widget) {
    if (const auto* label = qobject_cast<const QLabel*>(&widget)) {
        const bool fits = label->wordWrap() || label->width() >= label->minimumSizeHint().width();
        return label->text().isEmpty() || (fits && isShownInFull(widget));
    }
    const auto* button = qobject_cast<const QAbstractButton*>(&widget);
    return button == nullptr || button->text().isEmpty() ||
           (button->width() >= button->minimumSizeHint().width() && isShownInFull(widget));
}

/// Texts as a language with long words has them, written from the right, as long as this lives.
class LongTexts {
public:
    LongTexts() {
        QCoreApplication::installTranslator(&m_translator);
        QGuiApplication::setLayoutDirection(Qt::RightToLeft);
    }
    ~LongTexts() {
        QGuiApplication::setLayoutDirection(Qt::LeftToRight);
        QCoreApplication::removeTranslator(&m_translator);
    }
    LongTexts(const LongTexts&) = delete;
    LongTexts& operator=(const LongTexts&) = delete;

private:
    LongWinded m_translator;
};

inline QString described(const QWidget& widget) {
    const auto* label = qobject_cast<const QLabel*>(&widget);
    const auto* button = qobject_cast<const QAbstractButton*>(&widget);
    return QStringLiteral("%1 \"%2\" in %3")
        .arg(QLatin1String(widget.metaObject()->className()),
             label ? label->text() : (button ? button->text() : widget.accessibleName()),
             widget.parentWidget() ? QLatin1String(widget.parentWidget()->metaObject()->className())
                                   : QLatin1String("nothing"));
}

/// Whether the widget has room, if need be after scrolling sideways; not where no scroll bar says that there
/// is more.
inline bool hasRoomSomewhere(const QWidget& widget) {
    bool fits = hasRoom(widget);
    for (QWidget* holder = widget.parentWidget(); !fits && holder != nullptr;
         holder = holder->parentWidget()) {
        const auto* area = qobject_cast<QScrollArea*>(holder);
        if (area == nullptr || area->horizontalScrollBarPolicy() == Qt::ScrollBarAlwaysOff) {
            continue;
        }
        constexpr int kStep_px = 10;
        QScrollBar* bar = area->horizontalScrollBar();
        for (int at = bar->minimum(); !fits && at <= bar->maximum() + kStep_px; at += kStep_px) {
            bar->setValue(at);
            fits = hasRoom(widget);
        }
    }
    return fits;
}

/// What is cut in a window, for people to read.
inline QStringList cutIn(const QWidget& window) {
    QList<const QWidget*> seen; // before anything is scrolled
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        if (widget->isVisibleTo(&window) && widget->visibleRegion().boundingRect().width() > 0) {
            seen << widget;
        }
    }
    QStringList cut;
    for (const QWidget* widget : seen) {
        if (!hasRoomSomewhere(*widget)) {
            cut << described(*widget);
        }
    }
    return cut;
}

/// What lies over a sibling, or outside of what holds it.
inline QStringList crowdedIn(const QWidget& window) {
    QStringList crowded;
    QList<const QWidget*> parents{&window};
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        parents << widget;
    }
    for (const QWidget* parent : parents) {
        if (!parent->isVisibleTo(&window) || parent->layout() == nullptr) {
            continue;
        }
        QList<const QWidget*> children;
        for (const QWidget* child : parent->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
            const bool isBehindTab =
                qobject_cast<const QDockWidget*>(child) != nullptr && child->visibleRegion().isEmpty();
            if (child->isVisibleTo(&window) && parent->layout()->indexOf(child) >= 0 && !isBehindTab) {
                children << child;
            }
        }
        for (qsizetype i = 0; i < children.size(); ++i) {
            if (!parent->rect().contains(children[i]->geometry())) {
                crowded << described(*children[i]) + QStringLiteral(" sticks out");
            }
            for (qsizetype j = i + 1; j < children.size(); ++j) {
                if (children[i]->geometry().intersects(children[j]->geometry())) {
                    crowded << described(*children[i]) + QStringLiteral(" lies over ") +
                                   described(*children[j]);
                }
            }
        }
    }
    return crowded;
}

inline void checkRoom(const QWidget& window) {
    const QStringList cut = cutIn(window);
    const QStringList crowded = crowdedIn(window);
    INFO("cut: " << cut.join(QLatin1Char('\n')).toStdString());
    INFO("crowded: " << crowded.join(QLatin1Char('\n')).toStdString());
    CHECK(cut.isEmpty());
    CHECK(crowded.isEmpty());
}

} // namespace pumpwright
