#include "app/desktop/circuit/spoken_text.h"

#include "app/desktop/circuit/layout.h"
#include "app/desktop/shown_text.h"
#include "core/parts/part_kind.h"

#include <QCoreApplication>
#include <QStringList>

#include <cmath>

namespace pumpwright {
namespace {

struct Spoken {
    Q_DECLARE_TR_FUNCTIONS(pumpwright::Spoken)
};

QString referenceOf(const Circuit& circuit, const End& end) {
    const auto part = circuit.parts.find(end.part);
    return part == circuit.parts.end() ? QString() : shown(part->second.reference);
}

QString endText(const Circuit& circuit, const End& end) {
    return referenceOf(circuit, end) + u' ' + shown(end.terminal);
}

/// A contact that rests the other way than the first one is in the other state.
bool isClosed(const Contact& contact, const Contact& first, const PartLive& live) {
    return live.closed == (contact.closedAtRest == first.closedAtRest);
}

QStringList contactTexts(const Features& features, const PartLive& live) {
    if (features.contacts.size() == 1 && features.coils.empty()) {
        return {live.closed ? Spoken::tr("contact closed") : Spoken::tr("contact open")};
    }
    QStringList texts;
    for (const Contact& contact : features.contacts) {
        const bool closed = isClosed(contact, features.contacts.front(), live);
        texts << (closed ? Spoken::tr("contact %1 closed") : Spoken::tr("contact %1 open"))
                     .arg(shown(contact.to));
    }
    return texts;
}

/// What is fed: a coil, a motor, a lamp, or anything else that was seen to work.
QString feedText(const Features& features, const PartLive& live) {
    if (!features.coils.empty()) {
        return live.energised ? Spoken::tr("coil energised") : Spoken::tr("coil not energised");
    }
    if (features.pump) {
        return live.energised ? Spoken::tr("runs") : Spoken::tr("stands still");
    }
    if (!features.loads.empty() && features.loads.front().sort == LoadSort::Lamp) {
        return live.energised ? Spoken::tr("lit") : Spoken::tr("dark");
    }
    return live.energised ? Spoken::tr("on") : QString();
}

} // namespace

QString spokenName(const Part& part) {
    const QString name = shown(part.reference) + u' ' + translatedWords(kindOf(part).title());
    return part.label.empty() ? name : name + QStringLiteral(", ") + shown(part.label);
}

QString spokenName(const Circuit& circuit, const Wire& wire) {
    return Spoken::tr("Wire %1, from %2 to %3")
        .arg(wireLabel(wire), endText(circuit, wire.from), endText(circuit, wire.to));
}

QString spokenName(const Circuit& circuit, const Hose& hose) {
    return Spoken::tr("Hose %1, from %2 to %3")
        .arg(shown(hose.reference), endText(circuit, hose.from), endText(circuit, hose.to));
}

QString spokenName(const Finding& finding) {
    return translatedWords(signalWordName(finding.word)) + QStringLiteral(": ") + translated(finding.what);
}

QString spokenState(const Part& part, const PartLive& live) {
    const Features features = kindOf(part).features(part);
    QStringList texts;
    if (!live.flashes) { // else neither state is shown, and the reading says so
        texts << feedText(features, live) << contactTexts(features, live);
    }
    if (features.fuse && live.closed) {
        texts << Spoken::tr("whole");
    }
    texts << live.reading;
    texts.removeAll(QString());
    return texts.join(QStringLiteral(", "));
}

QString spokenState(const Circuit& circuit, const Wire& wire, const WireLive& live) {
    if (live.current_A != 0.0) {
        const bool forwards = live.current_A > 0;
        return Spoken::tr("%1 from %2 to %3")
            .arg(readingText(std::abs(live.current_A), QuantityKind::Current),
                 referenceOf(circuit, forwards ? wire.from : wire.to),
                 referenceOf(circuit, forwards ? wire.to : wire.from));
    }
    return live.live ? Spoken::tr("live") : Spoken::tr("without voltage");
}

QString spokenState(const Finding& finding) {
    const QString why = translated(finding.why);
    if (!finding.waiver) {
        return why;
    }
    const QString waived = Spoken::tr("Waived by %1: %2");
    return waived.arg(shown(finding.waiver->initials), shown(finding.waiver->reason)) + u' ' + why;
}

} // namespace pumpwright
