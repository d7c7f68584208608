#pragma once

#include "app/desktop/document/selection.h"
#include "app/desktop/panels/quantity_text.h"
#include "core/checks/finding.h"

#include <QAbstractListModel>

namespace pumpwright {

/// What tells findings apart across two checks: rule and what it is about.
struct FindingKey {
    std::string rule;
    std::vector<std::string> subjects;
    friend bool operator==(const FindingKey&, const FindingKey&) = default;
};

FindingKey findingKey(const Finding& finding);

/// What a finding is about, to be selected.
SelectedObjects subjectsOf(const Finding& finding);

/// The findings in the order of the check. A new check changes only the rows that differ, so that selection
/// and scroll position stay.
class FindingsModel final : public QAbstractListModel {
    Q_OBJECT

public:
    enum Role {
        SignalWordRole = Qt::UserRole, ///< int of SignalWord
        WaivedRole,
        TitleRole,
        WhatRole,
    };

    using QAbstractListModel::QAbstractListModel;

    void setFindings(const std::vector<Finding>& findings);
    const Finding* finding(const QModelIndex& index) const;
    int openCount() const; ///< findings without a waiver

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    std::vector<Finding> m_findings;
};

/// "Found 14.2 A, limit 10 A", with both units of a vacuum. Empty for what is only there or not there.
QString findingValueText(const Finding& finding, const ShownUnits& units);

} // namespace pumpwright
