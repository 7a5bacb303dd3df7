// Before anything else on the page, so that nothing that is refused goes unseen.
window.refused = [];
addEventListener('securitypolicyviolation', ({effectiveDirective, blockedURI, sample}) => {
  window.refused.push(`${effectiveDirective}: ${blockedURI} ${sample}`);
});
