namespace Recipe.Engineering.Tests;

public class StatisticsTests
{
    // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, upper critical values of Student's t (from memory of the table).
    [Theory]
    [InlineData(0.975, 1, "12.706")]
    [InlineData(0.975, 4, "2.776")]
    [InlineData(0.975, 10, "2.228")]
    [InlineData(0.95, 5, "2.015")]
    [InlineData(0.99, 20, "2.528")]
    [InlineData(0.995, 30, "2.750")]
    [InlineData(0.9, 3, "1.638")]
    [InlineData(0.975, 100, "1.984")]
    public void Student_t_agrees_with_the_table(double probability, int freedom, string printed) =>
        Digits.AsPrinted(printed, StudentT.Quantile(probability, freedom));

    // Closed forms: one degree of freedom is the Cauchy distribution; two have t / sqrt(2 + t2).
    [Theory]
    [InlineData(-3.5)]
    [InlineData(-0.2)]
    [InlineData(0)]
    [InlineData(0.7)]
    [InlineData(12.5)]
    public void Student_t_agrees_with_its_closed_forms(double t)
    {
        Assert.Equal(0.5 + (Math.Atan(t) / Math.PI), StudentT.Cumulative(t, 1), 1e-12);
        Assert.Equal(0.5 + (t / (2 * Math.Sqrt(2 + (t * t)))), StudentT.Cumulative(t, 2), 1e-12);
    }

    // NIST/SEMATECH e-Handbook, 1.3.5.17.1 (from memory; G recomputed): eight masses of the Tietjen-Moore data; G = 2.4687. The one-sided critical value at 5 %
    // is printed as 2.032; one side at 5 % is both sides at 10 %.
    [Fact]
    public void Grubbs_agrees_with_the_handbook()
    {
        double[] values = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];
        Assert.Equal(2.468765, Outlier.Grubbs(values, out int worst), 5e-7);
        Assert.Equal(7, worst);
        Digits.AsPrinted("2.032", Outlier.Critical(8, 0.10));
        Assert.Equal([7], Outlier.Find(values));
        Assert.Empty(Outlier.Find(values[..7]));
    }

    // Summary of the ZARR13 data in the NIST/SEMATECH e-Handbook, 1.3.5.2 (from memory): N 195, mean 9.261460, standard deviation 0.022789; 95 %
    // limits 9.258242 and 9.264679. The data are rebuilt here as half below and half above the mean so that they have just that summary.
    [Fact]
    public void Interval_of_the_mean_agrees_with_the_handbook()
    {
        const int n = 195;
        const double mean = 9.261460;
        const double step = 0.02278881;
        double[] values = [mean, .. Enumerable.Range(0, n - 1).Select(i => mean + (i % 2 == 0 ? step : -step))];
        Estimate estimate = Estimate.From(values);
        Assert.Equal(0.02278881, estimate.Deviation, 1e-8);
        Assert.Equal((9.264679 - 9.258242) / 2, estimate.HalfWidth, 5e-7);
        Assert.Equal(estimate.HalfWidth * Math.Sqrt(n + 1), estimate.NextHalfWidth, 1e-9);
    }

    // NIST/SEMATECH e-Handbook, 6.3.2.2 (from memory, recomputed): ten flow rates; mean 50.81, mean moving range 1.8778, limits 55.8041 and 45.8159.
    [Fact]
    public void Chart_of_individuals_agrees_with_the_handbook()
    {
        IndividualsChart chart = IndividualsChart.From([49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]);
        Digits.AsPrinted("50.81", chart.Mean);
        Digits.AsPrinted("1.8778", chart.MovingRange);
        Digits.AsPrinted("55.8041", chart.High);
        Digits.AsPrinted("45.8159", chart.Low);
        Assert.All(chart.Signals, signal => Assert.Equal(ChartSignal.None, signal));
    }

    [Fact]
    public void Signals_of_the_chart_are_those_of_the_rules()
    {
        double[] calm = [10, 11, 10, 11, 10, 11, 10, 11, 10, 11];
        Assert.Equal(ChartSignal.BeyondLimit, IndividualsChart.From([.. calm, 25]).Signals[^1]);
        Assert.Equal(ChartSignal.OneSide, IndividualsChart.From([8, 9, 8, 9, 8, 9, 8, 9, 10, 11, 10, 11, 10, 11, 10, 11]).Signals[^1]);
        Assert.Equal(ChartSignal.None, IndividualsChart.From([8, 9, 8, 9, 8, 9, 8, 9, 10, 11, 10, 11, 10, 11, 10]).Signals[^1]);
        Assert.Equal(ChartSignal.Drift, IndividualsChart.From([12, 8, 12, 8, 12, 8, 9, 9.5, 10, 10.5, 11]).Signals[^1]);
        Assert.Equal(ChartSignal.None, IndividualsChart.From([12, 8, 12, 8, 12, 8, 9, 9.5, 10, 10.5, 10.4]).Signals[^1]);
        Assert.Equal(ChartSignal.None, IndividualsChart.From([10, 10.1, 30]).Signals[^1]);

        // A drift is one from the sixth value on, also where all values so far lie on one side of the mean.
        double[] drifting = [12, 12.5, 13, 13.5, 14, 14.5, 25, 18, 25];
        Assert.Equal(ChartSignal.Drift, IndividualsChart.From(drifting).Signals[5]);
        Assert.All(IndividualsChart.From(drifting).Signals.Take(5), signal => Assert.Equal(ChartSignal.None, signal));
    }

    // Simulated shops: the intervals hold what they promise, within what 2,000 trials can tell (three standard errors are 1.5 %).
    [Theory]
    [InlineData(5)]
    [InlineData(8)]
    [InlineData(20)]
    public void Intervals_cover_as_promised(int builds)
    {
        const int trials = 2000;
        NormalNumbers random = new(builds);
        int meanHeld = 0;
        int next = 0;
        for (int trial = 0; trial < trials; trial++)
        {
            Estimate estimate = Estimate.From(random.Take(builds, 0.42, 0.02));
            meanHeld += Math.Abs(estimate.Mean - 0.42) <= estimate.HalfWidth ? 1 : 0;
            next += Math.Abs(estimate.Mean - random.Next(0.42, 0.02)) <= estimate.NextHalfWidth ? 1 : 0;
        }

        Assert.InRange(meanHeld / (double)trials, 0.935, 0.966);
        Assert.InRange(next / (double)trials, 0.935, 0.966);
    }

    // One record in eight is wrong by twenty standard deviations: the plain mean is off by 2.5 of them, the estimate is not.
    [Fact]
    public void One_bad_record_does_not_move_the_estimate()
    {
        NormalNumbers random = new(3);
        int named = 0;
        for (int trial = 0; trial < 500; trial++)
        {
            double[] values = random.Take(8, 100, 2);
            values[trial % 8] += 40;
            Estimate estimate = Estimate.From(values);
            named += estimate.Outliers is [var one] && one == trial % 8 ? 1 : 0;
            Assert.InRange(estimate.Mean, 96, 104);
        }

        Assert.InRange(named, 480, 500);
    }

    [Fact]
    public void Too_few_values_conclude_nothing()
    {
        Assert.False(Estimate.From([1, 2, 3, 4]).IsEnough);
        Assert.True(Estimate.From([1, 2, 3, 4, 5]).IsEnough);
        Assert.Throws<ArgumentOutOfRangeException>(() => Estimate.From([1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Estimate.From([1, double.NaN]));
        Assert.Throws<ArgumentOutOfRangeException>(() => IndividualsChart.From([1]));
    }
}
