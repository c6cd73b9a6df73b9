"""Writes llt_weekly.json, llt_irregular.json and nile.json beside this file: trends by statsmodels and by batch algebra.

Run from the top of the repository, with numpy 2, scipy 1.17 and statsmodels 0.15 installed:

    python3 tests/vectors/trend_statsmodels.py

- llt_weekly: one reading a week, one week missing; UnobservedComponents, local linear trend, exact diffuse start.
- llt_irregular: a daily grid with readings on irregular days, two or three of them on some days, each with its own
  error, from three instruments whose offsets have a prior. By statsmodels as a model of three series (a second and third
  reading of a day are further series) whose offsets are constant states, exactly diffuse in level and slope; and by
  generalised least squares on the whole covariance matrix at once, which knows no filter. Both must agree here.
- nile: the flow of the Nile, local level, with the variances of Durbin and Koopman.

The likelihood is the diffuse one of Durbin and Koopman: a reading that settles what was not known at the start adds
-log(F)/2 alone, so that statsmodels' value is raised by log(2 pi)/2 for each state that was not known.

What is left out of each reading (`left_out`) is the difference to what generalised least squares says without it.
"""

import json
import pathlib

import numpy as np
import scipy.linalg
import statsmodels
import statsmodels.api as sm
from statsmodels.tsa.statespace.initialization import Initialization
from statsmodels.tsa.statespace.mlemodel import MLEModel

HERE = pathlib.Path(__file__).resolve().parent
ENGINE = f"statsmodels {statsmodels.__version__}, exact diffuse; independently generalised least squares by numpy"


def likelihood(result, unknown):
    return float(result.llf) + unknown * np.log(2 * np.pi) / 2


def write(name, data):
    (HERE / name).write_text(json.dumps(data, indent=1) + "\n")


def covariance_of_trend(days, level, slope):
    """Covariance of the level on each day, from the wandering alone (nothing on day 0)."""
    days = np.asarray(days)
    n = len(days)
    v = np.zeros((n, n))
    for i in range(n):
        for k in range(n):
            a, b = min(days[i], days[k]), max(days[i], days[k])
            v[i, k] = level * a
            # The slope's step of day j moves the level by (t - j - 1) days' worth at day t.
            j = np.arange(a)
            v[i, k] += slope * np.sum((a - j - 1) * (b - j - 1))
    return v


def gls(days, y, errors, offsets, sources, level, slope, ahead):
    """Level, slope and covariance on the last day, by prediction from the whole covariance."""
    days, y = np.asarray(days), np.asarray(y, float)
    last = days.max() + ahead
    everything = np.concatenate([days, [last, last + 1]])
    full = covariance_of_trend(everything, level, slope)
    n = len(days)
    # The level a day later without that day's own steps, less the level, is the slope.
    full[n + 1, n + 1] -= level
    v = full[:n, :n] + np.diag(errors)
    for i in range(n):
        for k in range(n):
            if sources[i] == sources[k]:
                v[i, k] += offsets[sources[i]]
    x = np.column_stack([np.ones(n), days])
    target = np.array([[1, last], [0, 1]])
    cross = full[:n, n:].copy()
    c = np.column_stack([cross[:, 0], cross[:, 1] - cross[:, 0]])
    own = np.array([[1.0, 0], [-1, 1]]) @ full[n:, n:] @ np.array([[1.0, 0], [-1, 1]]).T
    w = scipy.linalg.inv(v)
    xwx = scipy.linalg.inv(x.T @ w @ x)
    beta = xwx @ x.T @ w @ y
    state = target @ beta + c.T @ w @ (y - x @ beta)
    d = target - c.T @ w @ x
    cov = own - c.T @ w @ c + d @ xwx @ d.T
    m = w - w @ x @ xwx @ x.T @ w
    left_out = (m @ y) / np.diag(m)
    return state, cov, left_out, 1 / np.diag(m)


class Trend(MLEModel):
    """A daily trend read by up to `series` readings a day, each with its own error and source."""

    def __init__(self, grid, error, source, offsets, level, slope):
        series, states = grid.shape[1], 2 + len(offsets)
        super().__init__(grid, k_states=states, k_posdef=2)
        t = np.eye(states)
        t[0, 1] = 1
        self["transition"] = t
        self["selection"] = np.eye(states, 2)
        self["state_cov"] = np.diag([level, slope])
        design = np.zeros((series, states, len(grid)))
        design[:, 0, :] = 1
        cov = np.zeros((series, series, len(grid)))
        for day in range(len(grid)):
            for s in range(series):
                cov[s, s, day] = error[day, s]
                if source[day, s] >= 0:
                    design[s, 2 + source[day, s], day] = 1
        self["design"] = design
        self["obs_cov"] = cov
        self.ssm.initialization = Initialization(states)
        self.ssm.initialization.set((0, 2), "diffuse")
        self.ssm.initialization.set(
            (2, states), "known", constant=np.zeros(len(offsets)), stationary_cov=np.diag(offsets)
        )
        self.ssm.filter_univariate = True


def weekly():
    y = [312.0, 310.5, 311.5, 308.0, 309.0, 306.5, None, 304.0, 305.5, 302.0, 301.5, 299.0]
    obs, level, slope = 16, 0.25, 0.01
    values = np.array([np.nan if v is None else v for v in y])
    model = sm.tsa.UnobservedComponents(values, "lltrend", use_exact_diffuse=True)
    result = model.smooth([obs, level, slope])
    days = [i for i, v in enumerate(y) if v is not None]
    state, cov, left_out, left_var = gls(
        days, values[days], [obs] * len(days), [0], [0] * len(days), level, slope, 0
    )
    assert np.allclose(state, result.filtered_state[:, -1], atol=1e-8)
    assert np.allclose(cov, result.filtered_state_cov[:, :, -1], atol=1e-8)
    forecast = result.get_forecast(8)
    write(
        "llt_weekly_more.json",
        {
            "y": y,
            "var": {"obs": obs, "level": level, "slope": slope},
            "engine": ENGINE,
            "state": result.filtered_state[:, -1].tolist(),
            "cov": result.filtered_state_cov[:, :, -1].tolist(),
            "llf": likelihood(result, 2),
            "smoothed_level": result.smoothed_state[0].tolist(),
            "smoothed_level_var": result.smoothed_state_cov[0, 0].tolist(),
            "left_out": left_out.tolist(),
            "left_out_var": left_var.tolist(),
            "forecast_mean": forecast.predicted_mean.tolist(),
            "forecast_se_obs": forecast.se_mean.tolist(),
        },
    )


def irregular(name, seed, count, length):
    rng = np.random.default_rng(seed)
    level, slope = 0.04, 0.0006
    offsets = [64.0, 9.0, 2.25]
    days = np.sort(np.concatenate([[0], rng.choice(np.arange(1, length), count - 3, replace=False)]))
    # Second and third readings of some days.
    again = rng.choice(days, 2, replace=False)
    days = np.sort(np.concatenate([days, again, again[:1]]))
    sources = rng.integers(0, 3, len(days))
    sources[:3] = [0, 1, 0]
    errors = np.where(sources == 2, 4.0, np.where(sources == 1, 20.25, 25.0)) + rng.uniform(0, 1, len(days)).round(3)
    y = (420 - 0.31 * days + rng.normal(0, 4, len(days)) + np.array([6, -2, 1])[sources]).round(1)
    ahead = 9
    grid = np.full((days.max() + ahead + 1, 3), np.nan)
    error, source = np.ones(grid.shape), np.full(grid.shape, -1)
    for day, value, r, s in zip(days, y, errors, sources):
        slot = int(np.sum(~np.isnan(grid[day])))
        grid[day, slot], error[day, slot], source[day, slot] = value, r, s
    model = Trend(grid, error, source, offsets, level, slope)
    result = model.ssm.smooth()
    state, cov, left_out, left_var = gls(days, y, errors, offsets, sources, level, slope, ahead)
    assert np.allclose(state, result.filtered_state[:2, -1], atol=1e-7), (state, result.filtered_state[:2, -1])
    assert np.allclose(cov, result.filtered_state_cov[:2, :2, -1], atol=1e-7)
    write(
        name,
        {
            "engine": ENGINE,
            "readings": [
                {"day": int(d), "y": float(v), "var": float(r), "source": int(s)}
                for d, v, r, s in zip(days, y, errors, sources)
            ],
            "var": {"level": level, "slope": slope},
            "offsets": offsets,
            "day": int(days.max() + ahead),
            "state": state.tolist(),
            "cov": cov.tolist(),
            "offset_states": result.filtered_state[2:, -1].tolist(),
            "offset_cov": result.filtered_state_cov[2:, 2:, -1].tolist(),
            "llf": likelihood(result, 2),
            "smoothed_level": result.smoothed_state[0].tolist(),
            "smoothed_level_var": result.smoothed_state_cov[0, 0].tolist(),
            "left_out": left_out.tolist(),
            "left_out_var": left_var.tolist(),
        },
    )


def nile():
    flow = sm.datasets.nile.load_pandas().data["volume"].to_numpy()
    model = sm.tsa.UnobservedComponents(flow, "llevel", use_exact_diffuse=True)
    result = model.smooth([15099, 1469.1])
    write(
        "nile.json",
        {
            "engine": ENGINE,
            "flow": flow.tolist(),
            "var": {"obs": 15099, "level": 1469.1},
            "llf": likelihood(result, 1),
            "last_level": float(result.filtered_state[0, -1]),
            "last_var": float(result.filtered_state_cov[0, 0, -1]),
            "smoothed_level": result.smoothed_state[0].tolist(),
        },
    )


weekly()
irregular("llt_irregular.json", 7, 18, 120)
irregular("llt_dense.json", 11, 40, 150)
nile()
